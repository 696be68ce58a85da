namespace MeshSim.FloorPlans.Geometry;

/// <summary>On which side of a directed line a point lies.</summary>
public enum Side
{
    /// <summary>To the right of the direction of travel.</summary>
    Right = -1,

    /// <summary>Exactly on the line.</summary>
    On = 0,

    /// <summary>To the left of the direction of travel.</summary>
    Left = 1,
}

/// <summary>The signs on which all geometry rests, decided here and nowhere else, exactly.</summary>
public static class Predicates
{
    /// <summary>
    /// Twice the signed area of the triangle a, b, p in squared lattice steps: positive when p lies to the left of the line
    /// from a to b. Exact for all points of the <see cref="Lattice"/>.
    /// </summary>
    public static long SignedArea(PlanPoint a, PlanPoint b, PlanPoint p) =>
        (((long)b.X - a.X) * ((long)p.Y - a.Y)) - (((long)b.Y - a.Y) * ((long)p.X - a.X));

    /// <summary>On which side of the line from a to b the point p lies.</summary>
    public static Side SideOf(PlanPoint a, PlanPoint b, PlanPoint p) => (Side)Math.Sign(SignedArea(a, b, p));

    /// <summary>Whether the point p lies on the stretch from a to b, ends included.</summary>
    public static bool IsOn(PlanPoint a, PlanPoint b, PlanPoint p) =>
        SideOf(a, b, p) == Side.On
        && Math.Min(a.X, b.X) <= p.X && p.X <= Math.Max(a.X, b.X)
        && Math.Min(a.Y, b.Y) <= p.Y && p.Y <= Math.Max(a.Y, b.Y);

    /// <summary>Whether two stretches have a point in common, ends included.</summary>
    public static bool Touch(PlanPoint a, PlanPoint b, PlanPoint c, PlanPoint d)
    {
        if (Math.Max(a.X, b.X) < Math.Min(c.X, d.X) || Math.Max(c.X, d.X) < Math.Min(a.X, b.X)) return false;
        if (Math.Max(a.Y, b.Y) < Math.Min(c.Y, d.Y) || Math.Max(c.Y, d.Y) < Math.Min(a.Y, b.Y)) return false;
        return (int)SideOf(a, b, c) * (int)SideOf(a, b, d) <= 0 && (int)SideOf(c, d, a) * (int)SideOf(c, d, b) <= 0;
    }

    /// <summary>Whether two stretches cross in a point that is an end of neither.</summary>
    public static bool Cross(PlanPoint a, PlanPoint b, PlanPoint c, PlanPoint d) =>
        (int)SideOf(a, b, c) * (int)SideOf(a, b, d) < 0 && (int)SideOf(c, d, a) * (int)SideOf(c, d, b) < 0;
}
