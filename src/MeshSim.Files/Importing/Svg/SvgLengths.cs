namespace MeshSim.Files.Importing.Svg;

/// <summary>Lengths with units, as CSS fixes them: 96 user units to the inch, whatever screen or paper.</summary>
internal static class SvgLengths
{
    /// <summary>User units per inch (CSS 2.1, section 4.3.2).</summary>
    public const double PerInch = 96;

    /// <summary>User units per metre.</summary>
    public const double PerMetre = PerInch / 0.0254;

    /// <summary>A length in user units; null when the text is no length. A percentage needs something to be a share of.</summary>
    /// <param name="text">The text.</param>
    /// <param name="whole">What 100 % are, user units; null where percentages mean nothing.</param>
    public static double? Parse(string text, double? whole = null)
    {
        SvgScanner scanner = new(text);
        if (scanner.Number() is not { } number) return null;
        if (scanner.Next == '%') return whole is { } all && scanner.Take('%') && scanner.IsAtEnd ? number / 100 * all : null;
        if (scanner.Next == ' ' && !scanner.IsAtEnd) return null;
        string unit = scanner.Word();
        if (!scanner.IsAtEnd) return null;
        double? perUnit = unit switch
        {
            "" or "px" => 1,
            "in" => PerInch,
            "cm" => PerInch / 2.54,
            "mm" => PerInch / 25.4,
            "Q" => PerInch / 101.6,
            "pt" => PerInch / 72,
            "pc" => PerInch / 6,
            _ => null,
        };
        return number * perUnit;
    }

    /// <summary>Whether a length names a unit that a ruler has.</summary>
    public static bool IsPhysical(string text)
    {
        string unit = text.TrimEnd().TrimStart([.. "+-.0123456789 "]);
        return unit is "in" or "cm" or "mm" or "Q" or "pt" or "pc";
    }
}
