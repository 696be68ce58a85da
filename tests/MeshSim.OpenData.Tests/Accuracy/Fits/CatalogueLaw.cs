using MeshSim.Files;
using MeshSim.Propagation;
using MeshSim.Quantities;

namespace MeshSim.OpenData.Tests.Accuracy.Fits;

/// <summary>A model with exponent 2, the losses of the catalogue and the usual way round, and one offset for all levels.</summary>
internal sealed class CatalogueLaw : ILevelLaw
{
    private const double Exponent = 2;

    private readonly IPathLossModel model;
    private readonly double sentDbm;

    private CatalogueLaw(IPathLossModel model, double sentDbm) => (this.model, this.sentDbm) = (model, sentDbm);

    /// <summary>With the offset that leaves no bias over heard links.</summary>
    public static CatalogueLaw Of(MeasuredBuilding building, ModelName model, IReadOnlyCollection<MeasuredLink> known)
    {
        IPathLossModel made = ModelOf(building, model);
        return new(made, known.Average(link => link.HeardDbm + made.TotalBetween(link.From, link.To).Value));
    }

    /// <summary>With power and antennas as stated, nothing taken from the data.</summary>
    public static CatalogueLaw Stated(MeasuredBuilding building, double sentDbm, Decibels antennaGain) =>
        new(ModelOf(building, ModelName.Detour), sentDbm + (2 * antennaGain.Value));

    /// <inheritdoc/>
    public IReadOnlyList<double> LevelsOf(IReadOnlyList<MeasuredLink> links) => [.. links.Select(link => sentDbm - model.TotalBetween(link.From, link.To).Value)];

    private static IPathLossModel ModelOf(MeasuredBuilding building, ModelName model) =>
        PathLossModels.Create(model, building.Plan, Catalogues.ConstructionsByName, building.Carrier, Exponent);
}
