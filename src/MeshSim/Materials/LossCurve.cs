using MeshSim.Quantities;

namespace MeshSim.Materials;

/// <summary>
/// The planning loss of one construction at one frequency, against the angle of incidence: <see cref="PlanningLoss"/>
/// worked out at fixed cosines, straight lines between. Made once, asked millions of times.
/// </summary>
public sealed class LossCurve
{
    /// <summary>Number of straight pieces between the cosine of the cap and 1.</summary>
    public const int Intervals = 192;

    private static readonly double IntervalsPerCosine = Intervals / (1 - PlanningLoss.CapCosine);

    // Intervals + 1 knots, the capped angle first; one knot when the loss is stated.
    private readonly double[] knotsDb;

    /// <summary>Makes the curve of a construction.</summary>
    /// <param name="construction">With layers or with stated losses.</param>
    /// <param name="frequency">The carrier.</param>
    /// <exception cref="ArgumentException">
    /// Neither layers nor stated losses, too many layers, or a frequency outside <see cref="SlabSolver.FrequencyMegahertz"/>.
    /// </exception>
    public LossCurve(Construction construction, Frequency frequency)
    {
        SlabSolver.FrequencyMegahertz.Check(frequency.Megahertz);
        if (construction.Stated.IsEmpty)
        {
            IsExtrapolated = construction.Layers.Any(layer => !layer.Material.FrequencyGigahertz.Contains(frequency.Gigahertz));
            knotsDb = new double[Intervals + 1];
            for (int i = 0; i <= Intervals; i++)
                knotsDb[i] = PlanningLoss.OfLayers(construction.Layers, frequency, CosineAt(i)).Value;
        }
        else
        {
            IsExtrapolated = frequency < construction.Stated[0].Frequency || frequency > construction.Stated[^1].Frequency;
            knotsDb = [Decibels.Min(StatedLoss.At(construction.Stated, frequency), PlanningLoss.Ceiling).Value];
        }
    }

    private LossCurve(double[] knotsDb, bool isExtrapolated)
    {
        this.knotsDb = knotsDb;
        IsExtrapolated = isExtrapolated;
    }

    /// <summary>
    /// Whether a material is used outside the frequencies at which it was measured, or a stated loss outside those at which
    /// it is stated.
    /// </summary>
    public bool IsExtrapolated { get; }

    /// <summary>Whether the loss is the same at every angle.</summary>
    public bool IsConstant => knotsDb.Length == 1;

    /// <summary>The planning loss at an angle of incidence.</summary>
    /// <param name="cosine">Cosine of the angle between path and surface normal, 0 to 1; capped inside.</param>
    public Decibels At(double cosine)
    {
        double place = (cosine - PlanningLoss.CapCosine) * IntervalsPerCosine;
        if (IsConstant || !(place > 0)) return new(knotsDb[0]);
        if (place >= Intervals) return new(knotsDb[Intervals]);
        int below = (int)place;
        double lowDb = knotsDb[below], highDb = knotsDb[below + 1];
        return new(lowDb + ((place - below) * (highDb - lowDb)));
    }

    /// <summary>The same curve moved by what a measurement found at every angle, within 0 dB and <see cref="PlanningLoss.Ceiling"/>.</summary>
    /// <param name="correction">How much more it costs.</param>
    public LossCurve Corrected(Decibels correction) => correction == Decibels.Zero
        ? this
        : new([.. knotsDb.Select(knotDb => Math.Clamp(knotDb + correction.Value, 0, PlanningLoss.Ceiling.Value))], IsExtrapolated);

    private static double CosineAt(int knot) =>
        knot == Intervals ? 1 : PlanningLoss.CapCosine + (knot / IntervalsPerCosine);
}
