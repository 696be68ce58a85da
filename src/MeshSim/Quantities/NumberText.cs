using System.Globalization;

namespace MeshSim.Quantities;

/// <summary>
/// Numbers as people write them in files, in layers and on the command line: a sign, digits, a decimal point, an exponent such as
/// e3; the same in every culture, and nothing else.
/// </summary>
public static class NumberText
{
    private const NumberStyles Form = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    /// <summary>The number, or null when the text is not a finite number in that form.</summary>
    public static double? Parse(ReadOnlySpan<char> text) =>
        double.TryParse(text, Form, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number : null;

    /// <summary>Whether the text has the form of a number or names one, but none that is finite: too many digits before the point, or no number at all.</summary>
    public static bool IsNotFinite(ReadOnlySpan<char> text) =>
        double.TryParse(text, Form, CultureInfo.InvariantCulture, out double number) && !double.IsFinite(number);

    /// <summary>The shortest text that <see cref="Parse"/> reads back as the same number.</summary>
    public static string Of(double number) => number.ToString(CultureInfo.InvariantCulture);
}
