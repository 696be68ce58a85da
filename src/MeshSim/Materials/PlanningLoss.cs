using System.Collections.Immutable;
using System.Numerics;
using MeshSim.Quantities;

namespace MeshSim.Materials;

/// <summary>
/// The loss of a construction that planning uses. The exact loss of a layered wall swings by several decibels with a few
/// millimetres of cavity or a change of channel; nobody builds that precisely. So the transmitted power is averaged over
/// both polarisations and over thicknesses within <see cref="ThicknessSpread"/>, the angle is capped at
/// <see cref="CapDegrees"/>, and no element counts for more than <see cref="Ceiling"/>.
/// </summary>
public static class PlanningLoss
{
    /// <summary>
    /// Largest angle of incidence used, degrees. At 75° the first Fresnel zone of an 8 m path at 2.4 GHz stretches about
    /// 4 m along the wall: as long as the wall itself. What arrives beyond has gone round an edge, not through the slab.
    /// </summary>
    public const double CapDegrees = 75;

    /// <summary>How far each layer's thickness is varied, as a share of it, either way. Assumed.</summary>
    public const double ThicknessSpread = 0.1;

    /// <summary>Number of thickness sets averaged over.</summary>
    public const int ThicknessSets = 64;

    /// <summary>Most layers of one construction.</summary>
    public const int MaxLayers = 16;

    /// <summary>Most that one element costs: behind anything thicker, energy arrives another way. Assumed.</summary>
    public static readonly Decibels Ceiling = new(50);

    // Thickness factors, MaxLayers per set.
    private static readonly double[] Factors = MakeFactors();

    /// <summary>The loss of layers at one frequency and angle.</summary>
    /// <param name="layers">Front face first; at least one, at most <see cref="MaxLayers"/>.</param>
    /// <param name="frequency">Within <see cref="SlabSolver.FrequencyMegahertz"/>.</param>
    /// <param name="cosine">Cosine of the angle of incidence, 0 to 1; capped inside.</param>
    /// <exception cref="ArgumentException">No layer or too many, or a frequency out of range.</exception>
    public static Decibels OfLayers(ImmutableArray<Layer> layers, Frequency frequency, double cosine)
    {
        SlabSolver.FrequencyMegahertz.Check(frequency.Megahertz);
        if (layers.IsDefaultOrEmpty || layers.Length > MaxLayers)
            throw new ArgumentException(FormattableString.Invariant($"a construction has 1 to {MaxLayers} layers"), nameof(layers));

        var permittivities = new Complex[layers.Length];
        for (int m = 0; m < layers.Length; m++)
            permittivities[m] = layers[m].Material.RelativePermittivity(frequency);

        double capped = Math.Clamp(cosine, CapCosine, 1);
        double power = (MeanPower(layers, permittivities, frequency, capped, Polarisation.TransverseElectric)
            + MeanPower(layers, permittivities, frequency, capped, Polarisation.TransverseMagnetic)) / 2;

        // A layer of air lets everything through, and rounding must not make that a gain.
        double ceilingPower = (-Ceiling).PowerRatio;
        return new(-10 * Math.Log10(Math.Clamp(power, ceilingPower, 1)));
    }

    /// <summary>Cosine of <see cref="CapDegrees"/>.</summary>
    public static double CapCosine { get; } = Math.Cos(CapDegrees * Math.PI / 180);

    private static double MeanPower(
        ImmutableArray<Layer> layers, Complex[] permittivities, Frequency frequency, double cosine, Polarisation polarisation)
    {
        var recursion = new LayerRecursion(permittivities, frequency, cosine, polarisation);
        Span<double> thicknessesMetres = stackalloc double[layers.Length];
        double sum = 0;
        for (int set = 0; set < ThicknessSets; set++)
        {
            for (int m = 0; m < layers.Length; m++)
                thicknessesMetres[m] = layers[m].ThicknessMetres * Factors[(set * MaxLayers) + m];
            sum += recursion.TransmittedPower(thicknessesMetres);
        }

        return sum / ThicknessSets;
    }

    // Multiples of the square roots of primes, less their whole part, fill a cube evenly. They are fixed, so the same wall
    // has the same loss everywhere.
    private static double[] MakeFactors()
    {
        ReadOnlySpan<int> primes = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53];
        var factors = new double[ThicknessSets * MaxLayers];
        for (int i = 0; i < factors.Length; i++)
        {
            double place = ((i / MaxLayers) + 1) * Math.Sqrt(primes[i % MaxLayers]);
            factors[i] = 1 + (ThicknessSpread * ((2 * (place - Math.Floor(place))) - 1));
        }

        return factors;
    }
}
