namespace MeshSim.FloorPlans.Geometry;

/// <summary>A place in the building, on the <see cref="Lattice"/>. The default is the origin at the lowest floor.</summary>
/// <param name="Plan">Place on the plan.</param>
/// <param name="Z">Lattice steps above the floor of the lowest storey.</param>
public readonly record struct Position(PlanPoint Plan, int Z)
{
    /// <summary>Metres above the floor of the lowest storey.</summary>
    public double ZMetres => Lattice.ToMetres(Z);

    /// <summary>Straight-line distance, m.</summary>
    public double DistanceMetresTo(Position other)
    {
        double dx = Plan.X - (double)other.Plan.X, dy = Plan.Y - (double)other.Plan.Y, dz = Z - (double)other.Z;
        return Math.Sqrt((dx * dx) + (dy * dy) + (dz * dz)) / Lattice.StepsPerMetre;
    }
}
