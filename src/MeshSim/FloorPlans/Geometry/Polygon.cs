using System.Collections.Immutable;

namespace MeshSim.FloorPlans.Geometry;

/// <summary>Where a point lies with regard to a polygon.</summary>
public enum Location
{
    /// <summary>Not in it.</summary>
    Outside,

    /// <summary>Exactly on an edge or a corner.</summary>
    OnOutline,

    /// <summary>Strictly in it.</summary>
    Inside,
}

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

    /// <summary>Whether it bends the same way at every corner and runs around once. Corners on a straight edge are allowed.</summary>
    public bool IsConvex
    {
        get
        {
            if (TwiceSignedArea == 0) return false;
            Side inside = TwiceSignedArea > 0 ? Side.Left : Side.Right;
            foreach ((PlanPoint a, PlanPoint b) in Edges)
                foreach (PlanPoint corner in Corners)
                    if (Predicates.SideOf(a, b, corner) == (Side)(-(int)inside)) return false;
            return true;
        }
    }

    /// <summary>Whether a point lies inside or exactly on the outline.</summary>
    public bool Contains(PlanPoint point) => Locate(PathPoint.At(point)) != Location.Outside;

    /// <summary>Where the plan place of a path's point lies.</summary>
    public Location Locate(in PathPoint point)
    {
        bool inside = false;
        PlanPoint a = Corners[^1];
        foreach (PlanPoint b in Corners)
        {
            int aboveA = point.CompareY(a.Y), aboveB = point.CompareY(b.Y);
            if (aboveA * aboveB <= 0)
            {
                Side side = point.SideOf(a, b);
                if (side == Side.On && point.CompareX(a.X) * point.CompareX(b.X) <= 0) return Location.OnOutline;

                // An edge counts when it spans the point's height, lower end included, upper end not: a corner is met once.
                bool upward = aboveA >= 0 && aboveB < 0, downward = aboveB >= 0 && aboveA < 0;
                if ((upward && side == Side.Left) || (downward && side == Side.Right)) inside = !inside;
            }

            a = b;
        }

        return inside ? Location.Inside : Location.Outside;
    }
}
