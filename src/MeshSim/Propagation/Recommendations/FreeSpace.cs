using MeshSim.Quantities;

namespace MeshSim.Propagation.Recommendations;

/// <summary>Free-space basic transmission loss: ITU-R P.525-4 (08/2019).</summary>
public static class FreeSpace
{
    /// <summary>Accepted distances. Nearer than 0.1 m antennas couple instead of radiating (λ/2π is 0.11 m at 433 MHz).</summary>
    public static readonly ValidRange DistanceMetres = new(0.1, 1e6, "m");

    /// <summary>Accepted frequencies: wide of every home radio. The formula itself has no limit.</summary>
    public static readonly ValidRange FrequencyMegahertz = new(1, 450_000, "MHz");

    /// <summary>The loss between isotropic antennas, dB.</summary>
    /// <param name="distanceMetres">Within <see cref="DistanceMetres"/>.</param>
    /// <param name="frequencyMegahertz">Within <see cref="FrequencyMegahertz"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Either is out of range.</exception>
    public static double LossDb(double distanceMetres, double frequencyMegahertz)
    {
        DistanceMetres.Check(distanceMetres);
        FrequencyMegahertz.Check(frequencyMegahertz);

        double wavelengthMetres = new Frequency(frequencyMegahertz).WavelengthMetres;
        return 20 * Math.Log10(4 * Math.PI * distanceMetres / wavelengthMetres);  // Equation (3)
    }
}
