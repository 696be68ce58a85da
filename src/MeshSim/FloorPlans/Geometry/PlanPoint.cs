namespace MeshSim.FloorPlans.Geometry;

/// <summary>A place on the plan, on the <see cref="Lattice"/>. x runs right, y runs up. The default is the origin.</summary>
/// <param name="X">Lattice steps to the right.</param>
/// <param name="Y">Lattice steps up the page.</param>
public readonly record struct PlanPoint(int X, int Y)
{
    /// <summary>Metres to the right.</summary>
    public double XMetres => Lattice.ToMetres(X);

    /// <summary>Metres up the page.</summary>
    public double YMetres => Lattice.ToMetres(Y);

    /// <summary>The lattice point nearest to a place in metres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside <see cref="Lattice.CoordinateMetres"/>.</exception>
    public static PlanPoint FromMetres(double xMetres, double yMetres) => new(Lattice.FromMetres(xMetres), Lattice.FromMetres(yMetres));

    /// <summary>Distance on the plan, m.</summary>
    public double DistanceMetresTo(PlanPoint other)
    {
        double dx = X - (double)other.X, dy = Y - (double)other.Y;
        return Math.Sqrt((dx * dx) + (dy * dy)) / Lattice.StepsPerMetre;
    }

    /// <summary>Distance on the plan to the nearest point of the stretch from a to b, m.</summary>
    public double DistanceMetresTo(PlanPoint a, PlanPoint b)
    {
        double share = a == b ? 0 : Math.Clamp(ShareAlong(a, b), 0, 1);
        double dx = X - a.X - (share * ((double)b.X - a.X)), dy = Y - a.Y - (share * ((double)b.Y - a.Y));
        return Math.Sqrt((dx * dx) + (dy * dy)) / Lattice.StepsPerMetre;
    }

    /// <summary>Where this point projects onto the line from a to b: 0 at a, 1 at b, beyond them outside that range.</summary>
    public double ShareAlong(PlanPoint a, PlanPoint b)
    {
        double dx = b.X - (double)a.X, dy = b.Y - (double)a.Y;
        return (((X - (double)a.X) * dx) + ((Y - (double)a.Y) * dy)) / ((dx * dx) + (dy * dy));
    }

    /// <summary>Both coordinates in metres, such as "(1.9, 3.1)".</summary>
    public override string ToString() => FormattableString.Invariant($"({XMetres:0.####}, {YMetres:0.####})");
}
