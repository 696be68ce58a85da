using SkiaSharp;

namespace MeshSim.Drawing.Palettes;

/// <summary>
/// A colour in CIE 1976 L*a*b* under daylight D65: equal steps of L* look equally far apart in lightness, so a palette is laid
/// out here. The default is black.
/// </summary>
/// <param name="Lightness">L*, 0 (black) to 100 (white).</param>
/// <param name="A">a*, green below zero, red above.</param>
/// <param name="B">b*, blue below zero, yellow above.</param>
internal readonly record struct Lab(double Lightness, double A, double B)
{
    // White of D65 and the matrix from XYZ to linear sRGB, IEC 61966-2-1, from memory; a test sends known colours there and back.
    private const double WhiteX = 0.95047, WhiteZ = 1.08883;

    /// <summary>The colour between two, 0 the first, 1 the second.</summary>
    public static Lab Between(Lab first, Lab second, double share) =>
        new(Mix(first.Lightness, second.Lightness, share), Mix(first.A, second.A, share), Mix(first.B, second.B, share));

    /// <summary>The nearest sRGB colour, each channel cut to its range.</summary>
    public SKColor ToColour()
    {
        double fy = (Lightness + 16) / 116;
        double x = WhiteX * Cube(fy + (A / 500)), y = Cube(fy), z = WhiteZ * Cube(fy - (B / 200));
        double red = (3.2404542 * x) - (1.5371385 * y) - (0.4985314 * z);
        double green = (-0.9692660 * x) + (1.8760108 * y) + (0.0415560 * z);
        double blue = (0.0556434 * x) - (0.2040259 * y) + (1.0572252 * z);
        return new(Channel(red), Channel(green), Channel(blue));
    }

    private static double Mix(double a, double b, double share) => a + ((b - a) * share);

    private static double Cube(double f) => f > 6.0 / 29 ? f * f * f : 3 * (6.0 / 29) * (6.0 / 29) * (f - (4.0 / 29));

    private static byte Channel(double linear)
    {
        double coded = linear <= 0.0031308 ? 12.92 * linear : (1.055 * Math.Pow(linear, 1 / 2.4)) - 0.055;
        return (byte)Math.Round(Math.Clamp(coded, 0, 1) * 255);
    }
}
