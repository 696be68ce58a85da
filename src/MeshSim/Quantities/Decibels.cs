namespace MeshSim.Quantities;

/// <summary>A ratio on a decibel scale: a loss, a gain or a margin. The default is 0 dB, a ratio of one.</summary>
/// <param name="Value">The ratio, dB.</param>
public readonly record struct Decibels(double Value) : IComparable<Decibels>
{
    /// <summary>No gain and no loss.</summary>
    public static readonly Decibels Zero;

    /// <summary>The same ratio of powers on a linear scale, 1 at 0 dB.</summary>
    public double PowerRatio => Math.Pow(10, Value / 10);

    /// <summary>The decibel form of a ratio of powers.</summary>
    /// <param name="ratio">Linear ratio, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is zero, negative or not a number.</exception>
    public static Decibels FromPowerRatio(double ratio) =>
        ratio > 0 ? new(10 * Math.Log10(ratio)) : throw new ArgumentOutOfRangeException(nameof(ratio), ratio, "must be above 0");

    /// <summary>The larger of two ratios.</summary>
    public static Decibels Max(Decibels a, Decibels b) => a.Value >= b.Value ? a : b;

    /// <summary>The smaller of two ratios.</summary>
    public static Decibels Min(Decibels a, Decibels b) => a.Value <= b.Value ? a : b;

    /// <inheritdoc/>
    public int CompareTo(Decibels other) => Value.CompareTo(other.Value);

    /// <summary>The number with one decimal and its unit.</summary>
    public override string ToString() => FormattableString.Invariant($"{Value:0.0} dB");

#pragma warning disable CS1591 // The operators mean what they mean for numbers.
    public static Decibels operator +(Decibels a, Decibels b) => new(a.Value + b.Value);
    public static Decibels operator -(Decibels a, Decibels b) => new(a.Value - b.Value);
    public static Decibels operator -(Decibels a) => new(-a.Value);
    public static Decibels operator *(double factor, Decibels a) => new(factor * a.Value);
    public static bool operator <(Decibels a, Decibels b) => a.Value < b.Value;
    public static bool operator >(Decibels a, Decibels b) => a.Value > b.Value;
    public static bool operator <=(Decibels a, Decibels b) => a.Value <= b.Value;
    public static bool operator >=(Decibels a, Decibels b) => a.Value >= b.Value;
#pragma warning restore CS1591
}
