using MeshSim.Quantities;

namespace MeshSim.Drawing;

/// <summary>How large a picture is: either as wide as a given sheet, or at a given scale. The default is not a size; take <see cref="Default"/>.</summary>
public readonly record struct PictureSize
{
    /// <summary>Accepted widths: below, the legend leaves no room for a plan; above, no viewer opens the picture comfortably.</summary>
    public static readonly ValidRange WidthPixels = new(1000, 8000, "pixels");

    /// <summary>Accepted scales.</summary>
    public static readonly ValidRange PixelsPerMetre = new(5, 1000, "pixels per metre");

    /// <summary>A sheet 1600 pixels wide: fills the screen of a laptop.</summary>
    public static readonly PictureSize Default = OfWidth(1600);

    private PictureSize(int? width, double? scale) => (Width, Scale) = (width, scale);

    /// <summary>Greatest width of the sheet, pixels; null when the scale is given.</summary>
    public int? Width { get; }

    /// <summary>Scale, pixels per metre; null when the width is given.</summary>
    public double? Scale { get; }

    /// <summary>The largest scale at which the sheet is not wider than this and, as long as rooms stay legible, not taller either.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside <see cref="WidthPixels"/>.</exception>
    public static PictureSize OfWidth(int widthPixels) => new((int)WidthPixels.Check(widthPixels), null);

    /// <summary>As large as the plan comes out at a scale.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside <see cref="PixelsPerMetre"/>.</exception>
    public static PictureSize OfScale(double pixelsPerMetre) => new(null, PixelsPerMetre.Check(pixelsPerMetre));
}
