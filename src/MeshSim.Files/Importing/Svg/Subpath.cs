using System.Collections.Immutable;

namespace MeshSim.Files.Importing.Svg;

/// <summary>One step along a line: straight, or a cubic Bézier curve with two control points.</summary>
/// <param name="First">Control point of the start; for a straight step not used.</param>
/// <param name="Second">Control point of the end; for a straight step not used.</param>
/// <param name="End">Where it ends.</param>
/// <param name="IsStraight">Whether it is straight.</param>
internal readonly record struct CurveStep(SvgPoint First, SvgPoint Second, SvgPoint End, bool IsStraight)
{
    /// <summary>A straight step.</summary>
    public static CurveStep To(SvgPoint end) => new(end, end, end, true);
}

/// <summary>A connected line of a drawing. A closed one returns to its start, by a straight step where the last step does not.</summary>
/// <param name="Start">Where it starts.</param>
/// <param name="Steps">Its steps.</param>
/// <param name="IsClosed">Whether it is closed.</param>
internal sealed record Subpath(SvgPoint Start, ImmutableArray<CurveStep> Steps, bool IsClosed)
{
    /// <summary>The line through corners.</summary>
    public static Subpath Through(IReadOnlyList<SvgPoint> corners, bool isClosed) =>
        new(corners[0], [.. corners.Skip(1).Select(CurveStep.To)], isClosed);

    /// <summary>Where it ends, before it is closed.</summary>
    public SvgPoint End => Steps.IsEmpty ? Start : Steps[^1].End;

    /// <summary>The line as a map takes it. Control points go where the curve goes, so this is exact.</summary>
    public Subpath Under(Affine map) => new(
        map.Of(Start),
        [.. Steps.Select(step => new CurveStep(map.Of(step.First), map.Of(step.Second), map.Of(step.End), step.IsStraight))],
        IsClosed);

    /// <summary>
    /// Corners of a line of straight steps nowhere farther from this one than a tolerance. A curve is cut into as many equal shares
    /// of its parameter as its second differences ask for (Wang's bound for polynomial curves: n² ≥ d(d−1)/8 · M / tolerance, here
    /// with degree d = 3 and M the largest second difference of the control points).
    /// </summary>
    /// <param name="tolerance">Same unit as the points; above 0.</param>
    public ImmutableArray<SvgPoint> Flattened(double tolerance)
    {
        ImmutableArray<SvgPoint>.Builder corners = ImmutableArray.CreateBuilder<SvgPoint>();
        corners.Add(Start);
        SvgPoint at = Start;
        foreach (CurveStep step in Steps)
        {
            if (!step.IsStraight) AddCurve(corners, at, step, tolerance);
            corners.Add(step.End);
            at = step.End;
        }

        return corners.ToImmutable();
    }

    private static void AddCurve(ImmutableArray<SvgPoint>.Builder corners, SvgPoint start, CurveStep step, double tolerance)
    {
        double bend = Math.Max((start - (2 * step.First) + step.Second).Length, (step.First - (2 * step.Second) + step.End).Length);
        int shares = (int)Math.Clamp(Math.Ceiling(Math.Sqrt(0.75 * bend / tolerance)), 1, MostShares);
        for (int i = 1; i < shares; i++)
        {
            double t = i / (double)shares, u = 1 - t;
            corners.Add((u * u * u * start) + (3 * u * u * t * step.First) + (3 * u * t * t * step.Second) + (t * t * t * step.End));
        }
    }

    // A curve of a kilometre at a tenth of a millimetre needs some 3,000.
    private const int MostShares = 5000;
}
