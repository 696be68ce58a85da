using System.Globalization;
using MeshSim.Files.Diagnostics;

namespace MeshSim.Files.Sources;

/// <summary>Numbers as a home folder writes them: digits, a decimal point, perhaps an exponent; the same in every culture.</summary>
internal static class NumberText
{
    private const NumberStyles Form = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    /// <summary>The number, or null when the text is not a finite number in that form.</summary>
    public static double? Parse(string text) =>
        double.TryParse(text, Form, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number : null;

    /// <summary>The shortest text that <see cref="Parse"/> reads back as the same number.</summary>
    public static string Of(double number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>What is wrong with a text that <see cref="Parse"/> refuses, and what would be right.</summary>
    public static (string Message, string Help) Explain(string text)
    {
        string quoted = KnownNames.Quote(text);
        if (IsNotFinite(text)) return ($"{quoted} is not a finite number", "write an ordinary number such as 2.45");

        string withPoint = text.Replace(',', '.');
        if (withPoint != text && Parse(withPoint) is not null) return ($"{quoted} has a decimal comma", $"use a point: {withPoint}");

        string withoutUnit = text.TrimEnd([.. "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ%"]).TrimEnd();
        if (Parse(withoutUnit) is not null) return ($"{quoted} is not a number", $"leave the unit out: {withoutUnit}");
        return ($"{quoted} is not a number", "write a number such as 2.45");
    }

    private static bool IsNotFinite(string text) =>
        double.TryParse(text, Form, CultureInfo.InvariantCulture, out _)
        || text.TrimStart('+', '-', '.').ToUpperInvariant() is "NAN" or "INF" or "INFINITY" or "∞";
}
