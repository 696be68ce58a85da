using System.CommandLine.Parsing;
using MeshSim.Quantities;

namespace MeshSim.Cli.Parsing;

/// <summary>
/// Numbers on the command line, written as <see cref="NumberText"/> reads them: a decimal point, whatever the machine's language. The parser's own reading would take
/// <c>2,4</c> for 24 and <c>2.4</c> for 24 in turn.
/// </summary>
internal static class StrictNumber
{
    /// <summary>Reads one number.</summary>
    /// <param name="text">As it was typed.</param>
    /// <param name="range">What is accepted.</param>
    /// <param name="value">The number, or 0.</param>
    /// <param name="isOneOfSeveral">Whether further values may stand beside it, so that a comma may have been meant to part them.</param>
    /// <returns>What is wrong with it; null when nothing.</returns>
    public static string? Read(string text, ValidRange range, out double value, bool isOneOfSeveral = false)
    {
        double? number = NumberText.Parse(text);
        value = number ?? 0;
        if (number is not null) return range.Contains(value) ? null : $"{text} is outside {range}";
        if (!text.Contains(',', StringComparison.Ordinal)) return $"\"{text}\" is not a number";
        string several = isOneOfSeveral ? "; several values are separated by spaces" : "";
        return $"\"{text}\" is not a number: use a point: {text.Replace(',', '.')}{several}";
    }

    /// <summary>A parser of options that take one number.</summary>
    public static Func<ArgumentResult, double> One(ValidRange range) => result => Parse(result, result.Tokens[0].Value, range);

    /// <summary>A parser of options that take one number or several.</summary>
    public static Func<ArgumentResult, double[]> Several(ValidRange range) =>
        result => [.. result.Tokens.Select(token => Parse(result, token.Value, range, isOneOfSeveral: true))];

    /// <summary>A parser of options that take one whole number.</summary>
    public static Func<ArgumentResult, long> Whole(ValidRange range) => result =>
    {
        string text = result.Tokens[0].Value;
        double value = Parse(result, text, range);
        if (value != Math.Truncate(value)) result.AddError($"{(result.Parent as OptionResult)?.Option.Name ?? result.Argument.Name}: {text} is not a whole number");
        return (long)value;
    };

    private static double Parse(ArgumentResult result, string text, ValidRange range, bool isOneOfSeveral = false)
    {
        if (Read(text, range, out double value, isOneOfSeveral) is { } problem)
            result.AddError($"{(result.Parent as OptionResult)?.Option.Name ?? result.Argument.Name}: {problem}");
        return value;
    }
}
