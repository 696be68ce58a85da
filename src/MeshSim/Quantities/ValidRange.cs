using System.Runtime.CompilerServices;

namespace MeshSim.Quantities;

/// <summary>
/// The range in which a formula holds, written once and used by its guard, its message, its documentation and its tests.
/// The default accepts nothing but zero.
/// </summary>
/// <param name="Min">Lowest accepted value.</param>
/// <param name="Max">Highest accepted value.</param>
/// <param name="Unit">Unit of both, for messages.</param>
public readonly record struct ValidRange(double Min, double Max, string Unit)
{
    /// <summary>Whether a value lies in the range. Not-a-number never does.</summary>
    public bool Contains(double value) => value >= Min && value <= Max;

    /// <summary>Returns the value, or throws when it lies outside.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range or not a number.</exception>
    public double Check(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        Contains(value) ? value : throw new ArgumentOutOfRangeException(name, value, "must be " + this);

    /// <summary>The range in words, such as "1 to 100 GHz".</summary>
    public override string ToString() => FormattableString.Invariant($"{Min} to {Max} {Unit}");
}
