using System.Numerics;
using MeshSim.Quantities;

namespace MeshSim.Materials;

/// <summary>
/// Reflection and transmission of a plane wave by a stack of flat layers in air: ITU-R P.2040-3 (08/2023), the recursion
/// for N layers. It holds for any thickness; a lossless stack returns all power, |R|² + |T|² = 1.
/// </summary>
public static class SlabSolver
{
    /// <summary>Accepted angles between path and surface normal: anything short of grazing.</summary>
    public static readonly ValidRange AngleDegrees = new(0, Math.BitDecrement(90), "degrees");

    /// <summary>Accepted frequencies: the lowest and the highest of the material table of the recommendation.</summary>
    public static readonly ValidRange FrequencyMegahertz = new(1, 450_000, "MHz");

    /// <summary>Solves a stack of catalogue materials.</summary>
    /// <param name="layers">Front face first; at least one.</param>
    /// <param name="frequency">Within <see cref="FrequencyMegahertz"/>.</param>
    /// <param name="angleDegrees">Between path and surface normal, within <see cref="AngleDegrees"/>.</param>
    /// <param name="polarisation">Of the wave.</param>
    /// <exception cref="ArgumentException">No layer, or a frequency or angle out of range.</exception>
    public static SlabResponse Solve(ReadOnlySpan<Layer> layers, Frequency frequency, double angleDegrees, Polarisation polarisation)
    {
        FrequencyMegahertz.Check(frequency.Megahertz);
        var permittivities = new Complex[layers.Length];
        var thicknessesMetres = new double[layers.Length];
        for (int m = 0; m < layers.Length; m++)
        {
            permittivities[m] = layers[m].Material.RelativePermittivity(frequency);
            thicknessesMetres[m] = layers[m].ThicknessMetres;
        }

        return Solve(permittivities, thicknessesMetres, frequency, angleDegrees, polarisation);
    }

    /// <summary>Solves a stack of given permittivities.</summary>
    /// <param name="permittivities">Complex relative permittivity ε' − jε'' of each layer, front face first; at least one.</param>
    /// <param name="thicknessesMetres">Thickness of each, m.</param>
    /// <param name="frequency">Within <see cref="FrequencyMegahertz"/>.</param>
    /// <param name="angleDegrees">Between path and surface normal, within <see cref="AngleDegrees"/>.</param>
    /// <param name="polarisation">Of the wave.</param>
    /// <exception cref="ArgumentException">No layer, lists of unequal length, or a frequency or angle out of range.</exception>
    public static SlabResponse Solve(
        ReadOnlySpan<Complex> permittivities,
        ReadOnlySpan<double> thicknessesMetres,
        Frequency frequency,
        double angleDegrees,
        Polarisation polarisation)
    {
        FrequencyMegahertz.Check(frequency.Megahertz);
        AngleDegrees.Check(angleDegrees);
        if (permittivities.IsEmpty || permittivities.Length != thicknessesMetres.Length)
            throw new ArgumentException("a stack needs at least one layer and one thickness per layer", nameof(permittivities));

        double cosine = Math.Cos(angleDegrees * Math.PI / 180);
        return new LayerRecursion(permittivities, frequency, cosine, polarisation).Respond(thicknessesMetres);
    }
}
