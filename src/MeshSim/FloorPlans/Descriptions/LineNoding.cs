using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>
/// Divides every edge at the corners of other lines that lie on it, so that two lines which share a stretch share the same
/// edges, end by end. A slanting edge takes in corners within the snapping tolerance and bends to them, because no lattice
/// point may lie exactly on it.
/// </summary>
internal static class LineNoding
{
    /// <summary>The corners of each line with those of the others that lie on its edges put in, in order.</summary>
    public static List<PlanPoint>[] Divide(IReadOnlyList<PlanLine> lines, Findings findings)
    {
        var divided = new List<PlanPoint>[lines.Count];
        for (int i = 0; i < lines.Count; i++)
        {
            PlanLine line = lines[i];
            (PlanPoint Corner, PlanLine Of)[] others =
                [.. lines.Where(other => other != line).SelectMany(other => other.Corners.Select(corner => (corner, other)))];
            divided[i] = [];
            for (int edge = 0; edge < line.EdgeCount; edge++)
            {
                divided[i].Add(line.Edge(edge).Start);
                divided[i].AddRange(CornersOn(line, line.Edge(edge), others, findings));
            }

            if (!line.IsClosed) divided[i].Add(line.Corners[^1]);
        }

        return divided;
    }

    private static List<PlanPoint> CornersOn(
        PlanLine line, (PlanPoint Start, PlanPoint End) edge, (PlanPoint Corner, PlanLine Of)[] others, Findings findings)
    {
        (PlanPoint a, PlanPoint b) = edge;
        bool isSlanting = a.X != b.X && a.Y != b.Y;
        var found = new Dictionary<PlanPoint, double>();
        foreach ((PlanPoint corner, PlanLine of) in others)
        {
            if (found.ContainsKey(corner) || line.Corners.Contains(corner) || corner.ShareAlong(a, b) is <= 0 or >= 1) continue;
            double distanceMetres = corner.DistanceMetresTo(a, b);
            bool isOn = isSlanting ? distanceMetres <= LineSnapping.ToleranceMetres : Predicates.SideOf(a, b, corner) == Side.On;
            if (!isOn) continue;
            found.Add(corner, corner.ShareAlong(a, b));

            // Up to one step it is the lattice that bends the edge, not the person's figures.
            if (distanceMetres > Lattice.ToMetres(1))
                findings.Note(
                    line.Source, $"the edge of {line.Label} from {a} to {b} bends by {distanceMetres:0.####} m to meet the corner {corner} of {of.Label}");
        }

        return [.. found.OrderBy(item => item.Value).Select(item => item.Key)];
    }
}
