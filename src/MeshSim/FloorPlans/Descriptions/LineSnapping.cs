using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>
/// Brings together what a tape measure left a little apart. Upright and level edges that run side by side within the
/// tolerance are moved onto the one listed first; then corners onto corners; then corners onto upright or level edges. Nothing
/// moves further than the tolerance in one of these steps, and every move is noted.
/// </summary>
internal static class LineSnapping
{
    /// <summary>Edges and corners nearer than this are taken for the same one, m. Assumed: what two tape measurements of a room differ by.</summary>
    public const double ToleranceMetres = 0.05;

    private const int Tolerance = (int)(ToleranceMetres * Lattice.StepsPerMetre);

    /// <summary>Moves the corners of the lines in place. Earlier lines keep their place where they can.</summary>
    public static void Snap(IReadOnlyList<PlanLine> lines, Findings findings)
    {
        SnapEdges(lines, isUpright: true, findings);
        SnapEdges(lines, isUpright: false, findings);
        for (int i = 1; i < lines.Count; i++)
            SnapCorners(lines[i], lines.Take(i), findings);
        for (int i = 0; i < lines.Count; i++)
            SnapCornersToEdges(lines[i], lines.Where(other => other != lines[i]), findings);
    }

    private static void SnapEdges(IReadOnlyList<PlanLine> lines, bool isUpright, Findings findings)
    {
        AxisEdge[] edges =
        [
            .. from line in lines
               from index in Enumerable.Range(0, line.EdgeCount)
               let edge = new AxisEdge(line, index, isUpright)
               where edge.IsAlongAxis
               select edge,
        ];
        var links = new List<(int Distance, int First, int Second)>();
        for (int i = 0; i < edges.Length; i++)
            for (int j = i + 1; j < edges.Length; j++)
                if (edges[i].Line != edges[j].Line && edges[i].RunsBeside(edges[j], Tolerance))
                    links.Add((Math.Abs(edges[i].Across - edges[j].Across), i, j));

        // Nearest first, so that edges that coincide already stay together, and a chain of near misses never drifts away.
        int[] groups = [.. Enumerable.Range(0, edges.Length)];
        foreach ((_, int first, int second) in links.Order())
            Join(edges, groups, groups[first], groups[second]);

        for (int i = 0; i < edges.Length; i++)
        {
            AxisEdge target = edges[groups[i]];
            int moved = Math.Abs(edges[i].Across - target.Across);
            if (moved == 0) continue;
            string from = edges[i].AcrossInWords, to = target.AcrossInWords;
            findings.Note(
                edges[i].Line.Source,
                $"the edge of {edges[i].Line.Label} at {from} moved by {Lattice.ToMetres(moved)} m to {to}, in line with {target.Line.Label}");
        }

        for (int i = 0; i < edges.Length; i++)
            edges[i].MoveTo(edges[groups[i]].Across);
    }

    // Each group goes by the number of its first edge. Two edges of one line that run beside each other never fall together: a
    // niche stays a niche.
    private static void Join(AxisEdge[] edges, int[] groups, int a, int b)
    {
        if (a == b) return;
        int[] members = [.. Enumerable.Range(0, edges.Length).Where(i => groups[i] == a || groups[i] == b)];
        if (members.Max(i => edges[i].Across) - members.Min(i => edges[i].Across) > Tolerance) return;
        foreach (int i in members)
            foreach (int j in members)
                if (edges[i].Line == edges[j].Line && edges[i].Across != edges[j].Across && edges[i].RunsBeside(edges[j], Tolerance)) return;
        foreach (int i in members)
            groups[i] = Math.Min(a, b);
    }

    private static void SnapCorners(PlanLine line, IEnumerable<PlanLine> earlier, Findings findings)
    {
        (PlanPoint Corner, PlanLine Of)[] targets = [.. earlier.SelectMany(other => other.Corners.Select(corner => (corner, other)))];
        for (int i = 0; i < line.Corners.Count; i++)
        {
            PlanPoint corner = line.Corners[i];
            (PlanPoint nearest, PlanLine of) = targets.MinBy(target => corner.DistanceMetresTo(target.Corner));
            if (nearest != corner && corner.DistanceMetresTo(nearest) <= ToleranceMetres) Move(line, i, nearest, of, findings);
        }
    }

    private static void SnapCornersToEdges(PlanLine line, IEnumerable<PlanLine> others, Findings findings)
    {
        (PlanPoint Start, PlanPoint End, PlanLine Of)[] edges =
        [
            .. from other in others
               from edge in other.Edges
               where edge.Start.X == edge.End.X || edge.Start.Y == edge.End.Y
               select (edge.Start, edge.End, other),
        ];
        if (edges.Length == 0) return;

        for (int i = 0; i < line.Corners.Count; i++)
        {
            PlanPoint corner = line.Corners[i];
            (PlanPoint a, PlanPoint b, PlanLine of) = edges.MinBy(edge => corner.DistanceMetresTo(edge.Start, edge.End));
            if (a == b || corner.ShareAlong(a, b) is <= 0 or >= 1) continue;
            PlanPoint onEdge = a.X == b.X ? corner with { X = a.X } : corner with { Y = a.Y };
            if (onEdge != corner && corner.DistanceMetresTo(onEdge) <= ToleranceMetres) Move(line, i, onEdge, of, findings);
        }
    }

    private static void Move(PlanLine line, int index, PlanPoint to, PlanLine of, Findings findings)
    {
        PlanPoint from = line.Corners[index];

        // A short edge must not shrink to nothing, and no corner is worth losing for a better fit.
        if (line.Corners.Contains(to)) return;
        findings.Note(line.Source, $"the corner {from} of {line.Label} moved by {from.DistanceMetresTo(to):0.####} m to {to}, to meet {of.Label}");
        line.Corners[index] = to;
    }

    /// <summary>An upright or level edge: where it lies across its direction, and from where to where it runs along it.</summary>
    private readonly struct AxisEdge(PlanLine line, int index, bool isUpright)
    {
        private readonly PlanPoint start = line.Edge(index).Start, end = line.Edge(index).End;

        public PlanLine Line { get; } = line;

        public bool IsAlongAxis => start != end && (isUpright ? start.X == end.X : start.Y == end.Y);

        public int Across => isUpright ? start.X : start.Y;

        public string AcrossInWords => FormattableString.Invariant($"{(isUpright ? "x" : "y")} = {Lattice.ToMetres(Across)}");

        private int Low => isUpright ? Math.Min(start.Y, end.Y) : Math.Min(start.X, end.X);

        private int High => isUpright ? Math.Max(start.Y, end.Y) : Math.Max(start.X, end.X);

        public bool RunsBeside(in AxisEdge other, int tolerance) =>
            Math.Abs(Across - other.Across) <= tolerance && Low <= other.High + tolerance && other.Low <= High + tolerance;

        public void MoveTo(int across)
        {
            foreach (int corner in (ReadOnlySpan<int>)[index, (index + 1) % Line.Corners.Count])
                Line.Corners[corner] = isUpright ? Line.Corners[corner] with { X = across } : Line.Corners[corner] with { Y = across };
        }
    }
}
