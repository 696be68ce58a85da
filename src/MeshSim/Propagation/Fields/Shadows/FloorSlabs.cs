using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>
/// Where a floor structure is solid, cut into slabs along y within which no room or stairwell has a corner and no two edges
/// cross: the solid runs of a slab lie between straight edges in an order that never changes.
/// </summary>
internal sealed class FloorSlabs
{
    // Edges of neighbouring rooms on one line differ by rounding only, less than this many lattice steps.
    private const double SameEdgeSteps = 1e-6;

    private readonly double[] borders;
    private readonly (FloorEdge Left, FloorEdge Right)[][] runs;
    private readonly bool[] isUpright;

    public FloorSlabs(FloorCrossings floor)
    {
        List<FloorEdge> edges = [];
        int polygon = 0, rooms = floor.Rooms.Count();
        foreach (Polygon outline in floor.Rooms.Concat(floor.Stairwells))
        {
            foreach ((PlanPoint a, PlanPoint b) in outline.Edges)
                edges.Add(new(a, b, polygon));
            polygon++;
        }

        IEnumerable<double> corners = edges.SelectMany(edge => new double[] { edge.A.Y, edge.B.Y });
        IEnumerable<double> crossings = edges.SelectMany(edge => edges.Where(edge.Crosses).Select(edge.CrossingY));
        borders = [.. corners.Concat(crossings).Distinct().Order()];
        runs = new (FloorEdge, FloorEdge)[borders.Length + 1][];
        for (int slab = 0; slab < runs.Length; slab++)
        {
            double low = slab == 0 ? double.NegativeInfinity : borders[slab - 1];
            double high = slab == borders.Length ? double.PositiveInfinity : borders[slab];
            IEnumerable<FloorEdge> spanning = edges.Where(edge => edge.LowY <= low && edge.HighY >= high);
            runs[slab] = [.. Runs(spanning, low + ((high - low) / 2), rooms, polygon)];
        }

        isUpright = [.. runs.Select(static found => found.All(static run => run.Left.IsUpright && run.Right.IsUpright))];
    }

    /// <summary>The slab that holds a y, found from one near it: rows follow one another.</summary>
    public int SlabAt(double y, int near)
    {
        int slab = near;
        while (slab < borders.Length && borders[slab] <= y) slab++;
        while (slab > 0 && borders[slab - 1] > y) slab--;
        return slab;
    }

    /// <summary>Distance from a y to the nearest border of its slab, lattice steps.</summary>
    public double StepsToBorder(int slab, double y)
    {
        double below = slab == 0 ? double.PositiveInfinity : y - borders[slab - 1];
        return slab == borders.Length ? below : Math.Min(below, borders[slab] - y);
    }

    /// <summary>The solid runs of a slab, from left to right.</summary>
    public ReadOnlySpan<(FloorEdge Left, FloorEdge Right)> RunsOf(int slab) => runs[slab];

    /// <summary>Whether the solid runs of a slab begin and end at the same x everywhere.</summary>
    public bool IsUpright(int slab) => isUpright[slab];

    private static List<(FloorEdge Left, FloorEdge Right)> Runs(IEnumerable<FloorEdge> spanning, double y, int rooms, int polygons)
    {
        var found = new List<(FloorEdge, FloorEdge)>();
        var isInside = new bool[polygons];
        FloorEdge? left = rooms == 0 ? FloorEdge.FarLeft : null;
        List<FloorEdge> ordered = [.. spanning.OrderBy(edge => edge.XAt(y))];
        for (int i = 0; i < ordered.Count; i++)
        {
            isInside[ordered[i].Polygon] ^= true;
            if (i + 1 < ordered.Count && ordered[i + 1].XAt(y) - ordered[i].XAt(y) < SameEdgeSteps) continue;
            bool isRoom = rooms == 0 || Array.IndexOf(isInside, true, 0, rooms) >= 0;
            bool isSolid = isRoom && Array.IndexOf(isInside, true, rooms) < 0;
            if (isSolid && left is null)
            {
                left = ordered[i];
            }
            else if (!isSolid && left is not null)
            {
                found.Add((left, ordered[i]));
                left = null;
            }
            else if (!isSolid)
            {
                // Between two holes that share an edge there is the edge itself.
                found.Add((ordered[i], ordered[i]));
            }
        }

        if (left is not null) found.Add((left, FloorEdge.FarRight));
        return found;
    }
}

/// <summary>An edge of a room or of a stairwell.</summary>
/// <param name="A">One end.</param>
/// <param name="B">The other.</param>
/// <param name="Polygon">Which outline it belongs to.</param>
internal sealed record FloorEdge(PlanPoint A, PlanPoint B, int Polygon)
{
    /// <summary>Where a floor that reaches everywhere ends.</summary>
    public static readonly FloorEdge FarLeft = new(new(int.MinValue, 0), new(int.MinValue, 1), -1);

    /// <inheritdoc cref="FarLeft"/>
    public static readonly FloorEdge FarRight = new(new(int.MaxValue, 0), new(int.MaxValue, 1), -1);

    private readonly double slope = ((double)B.X - A.X) / ((double)B.Y - A.Y);

    public bool IsFar => Polygon < 0;

    public bool IsUpright => A.X == B.X;

    public double LowY => Math.Min(A.Y, B.Y);

    public double HighY => Math.Max(A.Y, B.Y);

    public double XAt(double y) => A.X + ((y - A.Y) * slope);

    /// <summary>Whether it crosses another edge within both, neither of them along x.</summary>
    public bool Crosses(FloorEdge other) =>
        A.Y != B.Y && other.A.Y != other.B.Y
        && Math.Max(LowY, other.LowY) < Math.Min(HighY, other.HighY)
        && IsCrossedBy(other);

    /// <summary>Where it crosses another edge, rounded.</summary>
    public double CrossingY(FloorEdge other)
    {
        double atA = Predicates.SignedArea(other.A, other.B, A), atB = Predicates.SignedArea(other.A, other.B, B);
        return A.Y + (atA / (atA - atB) * ((double)B.Y - A.Y));
    }

    private bool IsCrossedBy(FloorEdge other) =>
        (int)Predicates.SideOf(A, B, other.A) * (int)Predicates.SideOf(A, B, other.B) < 0
        && (int)Predicates.SideOf(other.A, other.B, A) * (int)Predicates.SideOf(other.A, other.B, B) < 0;
}
