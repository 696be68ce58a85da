using MeshSim.Propagation;
using MeshSim.Propagation.Recommendations;
using MeshSim.Quantities;

namespace MeshSim.OpenData.Tests.Accuracy.Regression;

/// <summary>Level = offset − 10 n log₁₀ d − walls, the walls times a factor and then as their form says.</summary>
/// <param name="Form">How walls enter.</param>
/// <param name="OffsetDbm">The level at 1 m in the open.</param>
/// <param name="Exponent">n.</param>
/// <param name="WallFactor">By what catalogue losses are multiplied.</param>
/// <param name="DetourDb">What the way round costs, dB.</param>
internal sealed record LevelLaw(WallForm Form, double OffsetDbm, double Exponent, double WallFactor, double DetourDb)
{
    /// <summary>Two for free space, losses of the catalogue as they are, the usual way round; the offset is still to be found.</summary>
    public static LevelLaw Catalogue(WallForm form) => new(form, 0, 2, 1, Detour.UsualDb);

    /// <summary>The same with the offset that power, both antennas and the first metre of free space give.</summary>
    public static LevelLaw Stated(double sentDbm, Decibels antennaGain, Frequency carrier) => Catalogue(WallForm.Detour) with
    {
        OffsetDbm = sentDbm + (2 * antennaGain.Value) - FreeSpace.LossDb(1, carrier.Megahertz),
    };

    /// <summary>The level that it predicts, dBm.</summary>
    public double At(LevelPoint point) => OffsetDbm - (Exponent * point.AirDb) - WallsDb(point.WallsDb);

    /// <summary>What walls cost.</summary>
    public double WallsDb(double sumDb) => Form switch
    {
        WallForm.Sum => WallFactor * sumDb,
        WallForm.Detour => Detour.LossDb(WallFactor * sumDb, DetourDb),
        _ => 0,
    };

    /// <summary>The same law with the offset that leaves no bias.</summary>
    public LevelLaw WithOffsetFor(IReadOnlyCollection<LevelPoint> points) => this with { OffsetDbm = OffsetDbm + points.Average(point => point.LevelDbm - At(point)) };
}
