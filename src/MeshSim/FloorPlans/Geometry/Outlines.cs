namespace MeshSim.FloorPlans.Geometry;

/// <summary>Whether corners make a proper outline.</summary>
public static class Outlines
{
    /// <summary>
    /// The first pair of edges of a closed outline that meet elsewhere than in a corner that they share, or null for a simple
    /// polygon. An edge that folds back over its neighbour counts.
    /// </summary>
    /// <param name="corners">In order, no two neighbours equal, at least three.</param>
    public static (int First, int Second)? FirstSelfCrossing(IReadOnlyList<PlanPoint> corners)
    {
        ArgumentNullException.ThrowIfNull(corners);

        int count = corners.Count;
        for (int i = 0; i < count; i++)
        {
            (PlanPoint a, PlanPoint b) = (corners[i], corners[(i + 1) % count]);
            for (int j = i + 1; j < count; j++)
            {
                (PlanPoint c, PlanPoint d) = (corners[j], corners[(j + 1) % count]);
                bool meets = j == i + 1 ? FoldsBack(a, b, d)
                    : i == 0 && j == count - 1 ? FoldsBack(c, d, b)
                    : Predicates.Touch(a, b, c, d);
                if (meets) return (i, j);
            }
        }

        return null;
    }

    private static bool FoldsBack(PlanPoint before, PlanPoint corner, PlanPoint after) =>
        Predicates.SideOf(before, corner, after) == Side.On
        && (((long)before.X - corner.X) * ((long)after.X - corner.X)) + (((long)before.Y - corner.Y) * ((long)after.Y - corner.Y)) > 0;
}
