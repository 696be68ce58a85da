namespace MeshSim.Quantities;

/// <summary>
/// An absolute power level in dBm. The default is 0 dBm, one milliwatt. Two levels subtract to a ratio; they do not add,
/// because the sum of two numbers in dBm means nothing.
/// </summary>
/// <param name="Dbm">The level, dB above one milliwatt.</param>
public readonly record struct PowerLevel(double Dbm) : IComparable<PowerLevel>
{
    /// <summary>The power in milliwatts.</summary>
    public double Milliwatts => Math.Pow(10, Dbm / 10);

    /// <summary>The level of a power.</summary>
    /// <param name="milliwatts">Power, mW, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The power is zero, negative or not a number.</exception>
    public static PowerLevel FromMilliwatts(double milliwatts) =>
        milliwatts > 0
            ? new(10 * Math.Log10(milliwatts))
            : throw new ArgumentOutOfRangeException(nameof(milliwatts), milliwatts, "must be above 0 mW");

    /// <summary>The level of two powers that arrive together and have nothing to do with each other.</summary>
    public static PowerLevel Together(PowerLevel a, PowerLevel b) => FromMilliwatts(a.Milliwatts + b.Milliwatts);

    /// <summary>The higher of two levels.</summary>
    public static PowerLevel Max(PowerLevel a, PowerLevel b) => a.Dbm >= b.Dbm ? a : b;

    /// <inheritdoc/>
    public int CompareTo(PowerLevel other) => Dbm.CompareTo(other.Dbm);

    /// <summary>The number with one decimal and its unit.</summary>
    public override string ToString() => FormattableString.Invariant($"{Dbm:0.0} dBm");

#pragma warning disable CS1591 // The operators mean what they mean for levels.
    public static PowerLevel operator +(PowerLevel level, Decibels gain) => new(level.Dbm + gain.Value);
    public static PowerLevel operator -(PowerLevel level, Decibels loss) => new(level.Dbm - loss.Value);
    public static Decibels operator -(PowerLevel a, PowerLevel b) => new(a.Dbm - b.Dbm);
    public static bool operator <(PowerLevel a, PowerLevel b) => a.Dbm < b.Dbm;
    public static bool operator >(PowerLevel a, PowerLevel b) => a.Dbm > b.Dbm;
    public static bool operator <=(PowerLevel a, PowerLevel b) => a.Dbm <= b.Dbm;
    public static bool operator >=(PowerLevel a, PowerLevel b) => a.Dbm >= b.Dbm;
#pragma warning restore CS1591
}
