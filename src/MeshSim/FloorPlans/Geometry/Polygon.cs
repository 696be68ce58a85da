using System.Collections.Immutable;

namespace MeshSim.FloorPlans.Geometry;

/// <summary>A simple polygon on the plan: at least three corners, in order, the last joined to the first.</summary>
/// <param name="Corners">The corners.</param>
public sealed record Polygon(ImmutableArray<PlanPoint> Corners)
{
    /// <summary>The rectangle between two opposite corners.</summary>
    public static Polygon Rectangle(PlanPoint from, PlanPoint to) =>
        new([from, new(to.X, from.Y), to, new(from.X, to.Y)]);

    /// <summary>Its edges, in order.</summary>
    public IEnumerable<(PlanPoint Start, PlanPoint End)> Edges
    {
        get
        {
            for (int i = 0; i < Corners.Length; i++)
                yield return (Corners[i], Corners[(i + 1) % Corners.Length]);
        }
    }

    /// <summary>Twice the signed area in squared lattice steps: positive when the corners run anticlockwise.</summary>
    public Int128 TwiceSignedArea
    {
        get
        {
            Int128 sum = 0;
            foreach ((PlanPoint a, PlanPoint b) in Edges)
                sum += (Int128)a.X * b.Y - (Int128)b.X * a.Y;
            return sum;
        }
    }

    /// <summary>Area, m².</summary>
    public double AreaSquareMetres => Math.Abs((double)TwiceSignedArea) / 2 / ((double)Lattice.StepsPerMetre * Lattice.StepsPerMetre);

    /// <summary>Whether a point lies inside or exactly on the outline.</summary>
    public bool Contains(PlanPoint point)
    {
        bool inside = false;
        foreach ((PlanPoint a, PlanPoint b) in Edges)
        {
            Side side = Predicates.SideOf(a, b, point);
            if (side == Side.On && IsBetween(a.X, b.X, point.X) && IsBetween(a.Y, b.Y, point.Y)) return true;

            // An edge counts when it spans the point's height, lower end included, upper end not: a corner is met once.
            bool upward = a.Y <= point.Y && b.Y > point.Y, downward = b.Y <= point.Y && a.Y > point.Y;
            if ((upward && side == Side.Left) || (downward && side == Side.Right)) inside = !inside;
        }

        return inside;
    }

    private static bool IsBetween(int a, int b, int value) => Math.Min(a, b) <= value && value <= Math.Max(a, b);
}
