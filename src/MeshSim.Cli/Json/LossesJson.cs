using System.Collections.Immutable;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Cli.Json;

/// <summary>What a construction costs, as JSON.</summary>
internal sealed record LossesJson(
    string Construction,
    string Description,
    string Source,
    ImmutableArray<LayerJson> Layers,
    ImmutableArray<StatedLossJson> Stated,
    ImmutableArray<SlabLossJson> Losses)
{
    /// <summary>The record of a construction at each frequency and angle.</summary>
    public static LossesJson Of(Construction construction, IEnumerable<double> frequenciesMegahertz, IReadOnlyList<double> anglesDegrees) => new(
        construction.Name.Value,
        construction.Description,
        construction.Source,
        LayerJson.Of(construction),
        StatedLossJson.Of(construction),
        [
            .. from megahertz in frequenciesMegahertz
               from angle in anglesDegrees
               select SlabLossJson.Of(construction, new(megahertz), angle),
        ]);
}

/// <summary>
/// One frequency and angle: the value that planning uses, and the exact slab beside it, which a construction with a stated
/// loss does not have.
/// </summary>
internal sealed record SlabLossJson(
    double FrequencyMegahertz,
    double AngleDegrees,
    double PlanningLossDb,
    bool IsExtrapolated,
    PolarisationJson? Te,
    PolarisationJson? Tm)
{
    /// <summary>The record of a construction at one frequency and angle.</summary>
    public static SlabLossJson Of(Construction construction, Frequency frequency, double angleDegrees)
    {
        LossCurve planning = LossCurves.Of(construction, frequency);
        return new(
            frequency.Megahertz,
            angleDegrees,
            planning.At(Math.Cos(angleDegrees * Math.PI / 180)).Value,
            planning.IsExtrapolated,
            PolarisationJson.Of(construction, frequency, angleDegrees, Polarisation.TransverseElectric),
            PolarisationJson.Of(construction, frequency, angleDegrees, Polarisation.TransverseMagnetic));
    }
}

/// <summary>The exact slab in one polarisation.</summary>
internal sealed record PolarisationJson(double TransmissionLossDb, double ReflectionLossDb)
{
    /// <summary>The record of a layered construction; null where the loss is stated.</summary>
    public static PolarisationJson? Of(Construction construction, Frequency frequency, double angleDegrees, Polarisation polarisation)
    {
        if (construction.Layers.IsEmpty) return null;
        SlabResponse slab = SlabSolver.Solve(construction.Layers.AsSpan(), frequency, angleDegrees, polarisation);
        return new(slab.TransmissionLoss.Value, slab.ReflectionLoss.Value);
    }
}
