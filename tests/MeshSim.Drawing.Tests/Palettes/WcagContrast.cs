namespace MeshSim.Drawing.Tests.Palettes;

/// <summary>
/// Contrast of two colours after the Web Content Accessibility Guidelines 2.1, "relative luminance" and "contrast ratio": from 1,
/// the same, to 21, black on white. Written from the printed definition.
/// </summary>
public static class WcagContrast
{
    /// <summary>The least contrast of running text, success criterion 1.4.3.</summary>
    public const double LeastOfText = 4.5;

    /// <summary>The least contrast of signs with what they stand on, success criterion 1.4.11.</summary>
    public const double LeastOfSigns = 3;

    /// <summary>(L1 + 0.05) / (L2 + 0.05), the lighter luminance above.</summary>
    public static double Of((byte Red, byte Green, byte Blue) first, (byte Red, byte Green, byte Blue) second)
    {
        double a = Luminance(first), b = Luminance(second);
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance((byte Red, byte Green, byte Blue) colour) =>
        (0.2126 * Linear(colour.Red)) + (0.7152 * Linear(colour.Green)) + (0.0722 * Linear(colour.Blue));

    /// <summary>The guideline prints 0.03928 where the standard of the colour space has 0.04045; no 8-bit value lies between.</summary>
    private static double Linear(byte channel)
    {
        double coded = channel / 255.0;
        return coded <= 0.03928 ? coded / 12.92 : Math.Pow((coded + 0.055) / 1.055, 2.4);
    }
}
