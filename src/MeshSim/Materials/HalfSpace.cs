using System.Numerics;

namespace MeshSim.Materials;

/// <summary>Reflection by a material that never ends: ITU-R P.2040-3 (08/2023), reflection at a plane interface with air.</summary>
public static class HalfSpace
{
    /// <summary>Reflected over incident field.</summary>
    /// <param name="permittivity">Complex relative permittivity ε' − jε''.</param>
    /// <param name="angleDegrees">Between path and surface normal, within <see cref="SlabSolver.AngleDegrees"/>.</param>
    /// <param name="polarisation">Of the wave.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is out of range.</exception>
    public static Complex Reflection(Complex permittivity, double angleDegrees, Polarisation polarisation)
    {
        (double sine, double cosine) = Math.SinCos(SlabSolver.AngleDegrees.Check(angleDegrees) * Math.PI / 180);
        Complex normal = Complex.Sqrt(permittivity - (sine * sine));
        Complex air = polarisation == Polarisation.TransverseElectric ? cosine : permittivity * cosine;
        return (air - normal) / (air + normal);
    }
}
