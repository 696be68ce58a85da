namespace MeshSim.Quantities;

/// <summary>A radio frequency. The default is 0 MHz, which no model accepts.</summary>
/// <param name="Megahertz">The frequency, MHz.</param>
public readonly record struct Frequency(double Megahertz) : IComparable<Frequency>
{
    /// <summary>Speed of light in vacuum, m/s, exact by the definition of the metre (SI, 2019).</summary>
    public const double SpeedOfLightMetresPerSecond = 299_792_458;

    /// <summary>The frequency, Hz.</summary>
    public double Hertz => Megahertz * 1e6;

    /// <summary>The frequency, GHz.</summary>
    public double Gigahertz => Megahertz / 1e3;

    /// <summary>Wavelength in vacuum, m.</summary>
    public double WavelengthMetres => SpeedOfLightMetresPerSecond / Hertz;

    /// <inheritdoc/>
    public int CompareTo(Frequency other) => Megahertz.CompareTo(other.Megahertz);

    /// <summary>The number and its unit.</summary>
    public override string ToString() => FormattableString.Invariant($"{Megahertz:0.###} MHz");

#pragma warning disable CS1591 // The operators mean what they mean for numbers.
    public static bool operator <(Frequency a, Frequency b) => a.Megahertz < b.Megahertz;
    public static bool operator >(Frequency a, Frequency b) => a.Megahertz > b.Megahertz;
    public static bool operator <=(Frequency a, Frequency b) => a.Megahertz <= b.Megahertz;
    public static bool operator >=(Frequency a, Frequency b) => a.Megahertz >= b.Megahertz;
#pragma warning restore CS1591
}
