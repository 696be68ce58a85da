using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>Thermal noise of a receiver at the reference temperature of 290 K.</summary>
public static class ThermalNoise
{
    /// <summary>Boltzmann's constant, J/K, exact by the definition of the kelvin (SI, 2019).</summary>
    public const double BoltzmannJoulesPerKelvin = 1.380649e-23;

    /// <summary>Reference temperature of noise figures, K (IEEE convention).</summary>
    public const double ReferenceTemperatureKelvin = 290;

    /// <summary>Accepted noise bandwidths.</summary>
    public static readonly ValidRange BandwidthKilohertz = new(0.001, 1e6, "kHz");

    /// <summary>k T₀ B and the noise figure.</summary>
    /// <param name="bandwidthKilohertz">Noise bandwidth B, kHz, within <see cref="BandwidthKilohertz"/>.</param>
    /// <param name="noiseFigure">Noise figure of the receiver.</param>
    /// <exception cref="ArgumentOutOfRangeException">The bandwidth is outside its range.</exception>
    public static PowerLevel Floor(double bandwidthKilohertz, Decibels noiseFigure)
    {
        double watts = BoltzmannJoulesPerKelvin * ReferenceTemperatureKelvin * BandwidthKilohertz.Check(bandwidthKilohertz) * 1e3;
        return PowerLevel.FromMilliwatts(watts * 1e3) + noiseFigure;
    }
}
