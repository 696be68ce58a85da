namespace MeshSim.Materials;

/// <summary>How the electric field lies to the plane of incidence, which holds the path and the surface normal.</summary>
public enum Polarisation
{
    /// <summary>TE: the electric field lies across the plane of incidence.</summary>
    TransverseElectric,

    /// <summary>TM: the magnetic field lies across it, the electric field within.</summary>
    TransverseMagnetic,
}
