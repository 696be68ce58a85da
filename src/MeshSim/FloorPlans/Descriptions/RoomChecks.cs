using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>Checks outlines, one by one and against each other.</summary>
internal static class RoomChecks
{
    /// <summary>The corners of a proper outline, anticlockwise, no two neighbours equal; or null, and why.</summary>
    /// <param name="source">Where it was described.</param>
    /// <param name="label">What a person calls it.</param>
    /// <param name="corners">As described.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static List<PlanPoint>? ProperOutline(SourceKey source, string label, IReadOnlyList<PlanPoint> corners, Findings findings)
    {
        List<PlanPoint> distinct = [.. corners.Where((corner, i) => corner != corners[(i + 1) % corners.Count])];
        if (distinct.Count < 3)
        {
            findings.Wrong(source, Aspect.Outline, $"{label} has no area", $"at least three corners that do not lie in one line");
            return null;
        }

        var outline = new Polygon([.. distinct]);
        if (distinct.TrueForAll(corner => Predicates.SideOf(distinct[0], distinct[1], corner) == Side.On))
        {
            findings.Wrong(source, Aspect.Outline, $"{label} has no area", $"at least three corners that do not lie in one line");
            return null;
        }

        if (Outlines.FirstSelfCrossing(distinct) is { } crossing)
        {
            (PlanPoint a, PlanPoint b) = (distinct[crossing.First], distinct[(crossing.First + 1) % distinct.Count]);
            (PlanPoint c, PlanPoint d) = (distinct[crossing.Second], distinct[(crossing.Second + 1) % distinct.Count]);
            findings.Wrong(
                source,
                Aspect.Outline,
                $"the outline of {label} meets itself: {a} to {b} and {c} to {d}",
                $"the corners in the order in which one walks around");
            return null;
        }

        if (outline.TwiceSignedArea < 0) distinct.Reverse();
        return distinct;
    }

    /// <summary>A place where two divided outlines cover the same floor, or null. Both run anticlockwise.</summary>
    public static PlanPoint? FirstOverlap(IReadOnlyList<PlanPoint> first, IReadOnlyList<PlanPoint> second)
    {
        if (!BoxesMeet(first, second)) return null;
        foreach ((PlanPoint a, PlanPoint b) in EdgesOf(first))
        {
            foreach ((PlanPoint c, PlanPoint d) in EdgesOf(second))
            {
                // Along a shared edge both insides lie on the left: the same way round means the same side.
                if ((a == c && b == d) || Predicates.Cross(a, b, c, d)) return a;
            }
        }

        return MiddleWithin(first, second) ?? MiddleWithin(second, first);
    }

    private static PlanPoint? MiddleWithin(IReadOnlyList<PlanPoint> edgesOf, IReadOnlyList<PlanPoint> within)
    {
        var polygon = new Polygon([.. within]);
        foreach ((PlanPoint a, PlanPoint b) in EdgesOf(edgesOf))
        {
            var middle = new PathPoint(new(a, 0), new(b, 0), 1, 2);
            if (polygon.Locate(middle) == Location.Inside) return new((int)(((long)a.X + b.X) / 2), (int)(((long)a.Y + b.Y) / 2));
        }

        return null;
    }

    private static IEnumerable<(PlanPoint Start, PlanPoint End)> EdgesOf(IReadOnlyList<PlanPoint> corners) =>
        Enumerable.Range(0, corners.Count).Select(i => (corners[i], corners[(i + 1) % corners.Count]));

    private static bool BoxesMeet(IReadOnlyList<PlanPoint> first, IReadOnlyList<PlanPoint> second) =>
        first.Min(p => p.X) < second.Max(p => p.X) && second.Min(p => p.X) < first.Max(p => p.X)
        && first.Min(p => p.Y) < second.Max(p => p.Y) && second.Min(p => p.Y) < first.Max(p => p.Y);

    /// <summary>The corners of an outline without those that lie exactly in line with their neighbours.</summary>
    public static ImmutableArray<PlanPoint> WithoutStraightCorners(IReadOnlyList<PlanPoint> corners)
    {
        int count = corners.Count;
        return [.. corners.Where((corner, i) => Predicates.SideOf(corners[(i + count - 1) % count], corner, corners[(i + 1) % count]) != Side.On)];
    }
}
