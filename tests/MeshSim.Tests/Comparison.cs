namespace MeshSim.Tests;

/// <summary>One value of a table beside ours.</summary>
/// <param name="Row">Where it is printed.</param>
/// <param name="Column">The name of its column.</param>
/// <param name="Ours">What this program computes.</param>
/// <param name="Scale">What the error is measured against: the value, the whole that it is part of, or 1 when the error is absolute.</param>
/// <param name="Allowed">The largest difference that passes.</param>
/// <param name="Rule">Where that comes from, in a few words.</param>
public readonly record struct Comparison(PublishedRow Row, string Column, double Ours, double Scale, double Allowed, string Rule)
{
    public double Expected => Row.Number(Column);

    /// <summary>The difference as a share of <see cref="Scale"/>.</summary>
    public double Error => Ours == Expected ? 0 : Math.Abs(Ours - Expected) / Scale;
}

/// <summary>The ways to compare a result with a printed number.</summary>
public static class Comparisons
{
    public const string PrintedRule = "last digit";
    public const string ExactRule = "exact";

    /// <summary>A result that the printed digits pin down, and rounding.</summary>
    /// <param name="row">Where the number is printed.</param>
    /// <param name="column">Its column.</param>
    /// <param name="ours">The result.</param>
    /// <param name="scale">What rounding errors are in proportion to; the number itself, unless it is part of a larger whole.</param>
    public static Comparison Printed(this PublishedRow row, string column, double ours, double? scale = null)
    {
        double expected = row.Number(column);
        return new(row, column, ours, Math.Abs(scale ?? expected), PrintedDigits.Tolerance(expected, scale), PrintedRule);
    }

    /// <summary>A result within a share of the printed number.</summary>
    public static Comparison Within(this PublishedRow row, string column, double ours, double share = PrintedDigits.SearchShare)
    {
        double size = Math.Abs(row.Number(column));
        return new(row, column, ours, size, share * size, FormattableString.Invariant($"{share:0e+0} of the value"));
    }

    /// <summary>A result within an absolute distance of the printed number.</summary>
    public static Comparison Near(this PublishedRow row, string column, double ours, double allowed, string unit) =>
        new(row, column, ours, 1, allowed, FormattableString.Invariant($"{allowed:0.#e+0} {unit}").TrimEnd());

    /// <summary>A result that is the printed number, to the last bit.</summary>
    public static Comparison Exactly(this PublishedRow row, string column, double ours) =>
        new(row, column, ours, Math.Abs(row.Number(column)), 0, ExactRule);

    /// <summary>A yes or no that is the printed one.</summary>
    public static Comparison Exactly(this PublishedRow row, string column, bool ours) => row.Exactly(column, ours ? 1 : 0);

    public static void ShouldHold(this IEnumerable<Comparison> comparisons)
    {
        foreach (Comparison each in comparisons)
            each.Ours.Should().BeApproximately(each.Expected, each.Allowed, "{0} prints {1} so", each.Row.Place, each.Column);
    }
}
