using SkiaSharp;

namespace MeshSim.Drawing.Tests.Palettes;

/// <summary>How a colour looks to a colour-blind reader.</summary>
/// <param name="Name">Which kind of reader.</param>
/// <param name="Matrix">From linear sRGB to linear sRGB, row by row.</param>
public sealed record ColourVision(string Name, double[] Matrix)
{
    /// <summary>
    /// Complete colour blindness of each kind: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A physiologically-based model
    /// for simulation of color vision deficiency", IEEE TVCG 15 (6), 2009, severity 1.0. Values from memory; a test checks that
    /// each row sums to 1, so that grey stays grey.
    /// </summary>
    public static readonly ColourVision[] All =
    [
        new("full", [1, 0, 0, 0, 1, 0, 0, 0, 1]),
        new("protanopia", [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998]),
        new("deuteranopia", [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881]),
        new("tritanopia", [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900]),
    ];

    /// <summary>CIE 1976 L*, a*, b* under D65 of a colour as this reader sees it.</summary>
    public (double Lightness, double A, double B) See(SKColor colour)
    {
        double[] rgb = [Linear(colour.Red), Linear(colour.Green), Linear(colour.Blue)];
        double r = Row(0, rgb), g = Row(1, rgb), b = Row(2, rgb);
        double x = F(((0.4124564 * r) + (0.3575761 * g) + (0.1804375 * b)) / 0.95047);
        double y = F((0.2126729 * r) + (0.7151522 * g) + (0.0721750 * b));
        double z = F(((0.0193339 * r) + (0.1191920 * g) + (0.9503041 * b)) / 1.08883);
        return ((116 * y) - 16, 500 * (x - y), 200 * (y - z));
    }

    /// <summary>CIE 1976 colour difference as this reader sees it.</summary>
    public double Difference(SKColor first, SKColor second)
    {
        (double l1, double a1, double b1) = See(first);
        (double l2, double a2, double b2) = See(second);
        return Math.Sqrt(((l1 - l2) * (l1 - l2)) + ((a1 - a2) * (a1 - a2)) + ((b1 - b2) * (b1 - b2)));
    }

    public override string ToString() => Name;

    private double Row(int row, double[] rgb) => Math.Clamp(Enumerable.Range(0, 3).Sum(i => Matrix[(3 * row) + i] * rgb[i]), 0, 1);

    private static double Linear(byte channel)
    {
        double coded = channel / 255.0;
        return coded <= 0.04045 ? coded / 12.92 : Math.Pow((coded + 0.055) / 1.055, 2.4);
    }

    private static double F(double t) => t > Math.Pow(6.0 / 29, 3) ? Math.Cbrt(t) : (t / (3 * (6.0 / 29) * (6.0 / 29))) + (4.0 / 29);
}
