using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Tables;

/// <summary>Moves a point that lies exactly on the outline of a room into the room, where a device on that wall really is.</summary>
internal static class OffWall
{
    /// <summary>How far from the centre line of the wall, m: half of a thin wall.</summary>
    public const double DistanceMetres = 0.05;

    // In a sharp corner the point at that distance from both walls is far away; then the nearer one of these will do.
    private static readonly double[] Shares = [1, 0.5, 0.2];
    private const double LongestShift = 3;

    /// <summary>The moved point, strictly inside; null when the room is too narrow there.</summary>
    /// <param name="outline">The outline of the room.</param>
    /// <param name="point">A point on it.</param>
    public static PlanPoint? Move(Polygon outline, PlanPoint point)
    {
        (double X, double Y)[] normals =
            [.. outline.Edges.Where(edge => Predicates.IsOn(edge.Start, edge.End, point)).Select(edge => Inward(outline, edge.Start, edge.End))];
        (double X, double Y) sum = (normals.Sum(normal => normal.X), normals.Sum(normal => normal.Y));

        // Scaled so that the nearest of the walls at this point is one distance away.
        double least = normals.Min(normal => (normal.X * sum.X) + (normal.Y * sum.Y));
        double longest = Math.Sqrt((sum.X * sum.X) + (sum.Y * sum.Y)) / LongestShift;
        double scale = DistanceMetres / Math.Max(least, longest);
        foreach (double share in Shares)
        {
            PlanPoint moved = PlanPoint.FromMetres(point.XMetres + (sum.X * scale * share), point.YMetres + (sum.Y * scale * share));
            if (outline.Locate(PathPoint.At(moved)) == Location.Inside) return moved;
        }

        return null;
    }

    private static (double X, double Y) Inward(Polygon outline, PlanPoint a, PlanPoint b)
    {
        double turn = outline.TwiceSignedArea > 0 ? 1 : -1, lengthMetres = a.DistanceMetresTo(b);
        return (-turn * (b.YMetres - a.YMetres) / lengthMetres, turn * (b.XMetres - a.XMetres) / lengthMetres);
    }
}
