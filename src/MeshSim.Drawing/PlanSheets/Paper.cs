namespace MeshSim.Drawing.PlanSheets;

/// <summary>Sizes of paper (ISO 216).</summary>
public enum PaperFormat
{
    /// <summary>210 by 297 mm.</summary>
    A4,

    /// <summary>297 by 420 mm.</summary>
    A3,
}

/// <summary>A sheet of paper, lying or standing.</summary>
/// <param name="Format">Its size.</param>
/// <param name="IsLandscape">Whether its long side lies.</param>
internal readonly record struct Paper(PaperFormat Format, bool IsLandscape)
{
    /// <summary>
    /// How large a pixel of the drawing is on paper. Symbols and lettering keep their pixels, so a symbol is 5 mm wide and the
    /// smallest lettering 2.3 mm high: legible at arm's length.
    /// </summary>
    public const double MillimetresPerPixel = 0.2;

    /// <summary>A point, the unit of PDF: a 72nd of an inch.</summary>
    public const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>From left to right, mm.</summary>
    public double WidthMillimetres => IsLandscape ? LongMillimetres : ShortMillimetres;

    /// <summary>From top to bottom, mm.</summary>
    public double HeightMillimetres => IsLandscape ? ShortMillimetres : LongMillimetres;

    private double LongMillimetres => Format == PaperFormat.A3 ? 420 : 297;

    private double ShortMillimetres => Format == PaperFormat.A3 ? 297 : 210;

    /// <summary>A length on paper as pixels of the drawing.</summary>
    public static float Pixels(double millimetres) => (float)(millimetres / MillimetresPerPixel);

    /// <summary>Pixels of the drawing for a metre of the building.</summary>
    /// <param name="scale">What a length is divided by: 50 for 1:50.</param>
    public static double PixelsPerMetre(int scale) => 1000 / MillimetresPerPixel / scale;
}
