namespace MeshSim.FloorPlans.Geometry;

/// <summary>
/// The point of a straight path at an exact share of its length, Numerator / Denominator. Its coordinates need not lie on
/// the <see cref="Lattice"/>, so every question about it is put as a comparison and answered in whole numbers.
/// </summary>
/// <param name="From">Where the path starts.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Numerator">0 to <paramref name="Denominator"/>.</param>
/// <param name="Denominator">Above 0; below 2^53.</param>
public readonly record struct PathPoint(Position From, Position To, long Numerator, long Denominator)
{
    /// <summary>A lattice point as the start of a path of no length.</summary>
    public static PathPoint At(PlanPoint point) => new(new(point, 0), new(point, 0), 0, 1);

    /// <summary>The share of the path that lies before the point, 0 to 1, rounded.</summary>
    public double Share => Numerator / (double)Denominator;

    /// <summary>The sign of x − value.</summary>
    public int CompareX(int value) => Compare(From.Plan.X, To.Plan.X, value);

    /// <summary>The sign of y − value.</summary>
    public int CompareY(int value) => Compare(From.Plan.Y, To.Plan.Y, value);

    /// <summary>The sign of z − value.</summary>
    public int CompareZ(int value) => Compare(From.Z, To.Z, value);

    /// <summary>On which side of the line from a to b the point lies.</summary>
    public Side SideOf(PlanPoint a, PlanPoint b)
    {
        // The signed area is linear along the path, so it is interpolated between the two ends.
        long atFrom = Predicates.SignedArea(a, b, From.Plan), atTo = Predicates.SignedArea(a, b, To.Plan);
        return (Side)Int128.Sign(((Int128)(Denominator - Numerator) * atFrom) + ((Int128)Numerator * atTo));
    }

    private int Compare(int atFrom, int atTo, int value) =>
        Int128.Sign(((Int128)(Denominator - Numerator) * ((long)atFrom - value)) + ((Int128)Numerator * ((long)atTo - value)));
}
