using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Importing.Lines;

/// <summary>A piece of wall between two joints, on the lattice.</summary>
/// <param name="Start">One end.</param>
/// <param name="End">The other end.</param>
/// <param name="Wall">The stretch that it is a piece of.</param>
internal sealed record WallPart(PlanPoint Start, PlanPoint End, WallStretch Wall);

/// <summary>Cuts walls where others end on them or cross them, so that pieces share ends exactly.</summary>
internal static class PieceNoding
{
    /// <summary>The pieces of all walls, in the order of the walls; one that two walls have in common belongs to the first.</summary>
    /// <param name="walls">Walls, snapped.</param>
    /// <param name="twice">How many pieces were drawn more than once.</param>
    public static List<WallPart> Cut(IReadOnlyList<WallStretch> walls, out int twice)
    {
        List<WallPart> parts = [];
        HashSet<(PlanPoint, PlanPoint)> seen = [];
        twice = 0;
        PlanPoint[][] ends = [.. walls.Select(wall => new[] { PointOf(wall.Start), PointOf(wall.End) })];
        for (int i = 0; i < walls.Count; i++)
        {
            PlanPoint[] cuts = [.. CutsOf(i, walls, ends).Distinct().OrderBy(cut => cut.ShareAlong(ends[i][0], ends[i][1]))];
            for (int c = 1; c < cuts.Length; c++)
            {
                if (seen.Contains((cuts[c], cuts[c - 1])) || !seen.Add((cuts[c - 1], cuts[c]))) twice++;
                else parts.Add(new(cuts[c - 1], cuts[c], walls[i]));
            }
        }

        return parts;
    }

    /// <summary>The lattice point of a place.</summary>
    public static PlanPoint PointOf(DrawnPoint place) => PlanPoint.FromMetres(place.XMetres, place.YMetres);

    private static IEnumerable<PlanPoint> CutsOf(int index, IReadOnlyList<WallStretch> walls, PlanPoint[][] ends)
    {
        (PlanPoint a, PlanPoint b) = (ends[index][0], ends[index][1]);
        if (a == b) yield break;
        yield return a;
        yield return b;
        for (int i = 0; i < walls.Count; i++)
        {
            if (i == index || ends[i][0] == ends[i][1]) continue;
            foreach (PlanPoint end in ends[i])
                if (IsOn(end, a, b)) yield return end;

            // Where both have an end on the other, that end is the joint, not a crossing beside it.
            if (ends[i].Any(end => IsOn(end, a, b)) || ends[index].Any(end => IsOn(end, ends[i][0], ends[i][1]))) continue;
            if (!Predicates.Cross(a, b, ends[i][0], ends[i][1])) continue;
            (int low, int high) = index < i ? (index, i) : (i, index); // From both walls the same point.
            if (walls[low].MeetsAt(walls[high]) is { } at) yield return PointOf(walls[low].At(at));
        }
    }

    // A slanted wall seldom goes through lattice points; a step and a half is the farthest that rounding both takes them apart.
    private static bool IsOn(PlanPoint point, PlanPoint a, PlanPoint b) =>
        point == a || point == b || (point.ShareAlong(a, b) is > 0 and < 1 && point.DistanceMetresTo(a, b) <= Lattice.ToMetres(3) / 2);
}
