using MeshSim.Drawing.Sheets;
using SkiaSharp;

namespace MeshSim.Drawing.Inks;

/// <summary>Draws on one sheet, in pixels: all that a layer knows of where its strokes end up, so that every format shows the same picture.</summary>
internal abstract class Pen
{
    /// <summary>Fills the whole sheet.</summary>
    public abstract void Flood(SKColor colour);

    /// <summary>A straight line.</summary>
    public abstract void Line(Pixel start, Pixel end, SKColor colour, float width, float dash = 0);

    /// <summary>A line through several points.</summary>
    public abstract void Outline(ReadOnlySpan<Pixel> points, bool isClosed, SKColor colour, float width, float dash = 0);

    /// <summary>A filled area.</summary>
    public abstract void Area(ReadOnlySpan<Pixel> corners, SKColor colour);

    /// <summary>A filled box with rounded corners.</summary>
    public abstract void Plate(PixelBox box, SKColor colour, float radius = 0);

    /// <summary>The sides of a box.</summary>
    public abstract void Frame(PixelBox box, SKColor colour, float width, float radius = 0);

    /// <summary>A filled circle.</summary>
    public abstract void Disc(Pixel centre, float radius, SKColor colour);

    /// <summary>A circle.</summary>
    public abstract void Ring(Pixel centre, float radius, SKColor colour, float width);

    /// <summary>A line of text that starts at a place on its base line.</summary>
    public abstract void Text(string text, Pixel at, TextStyle style, SKColor colour);

    /// <summary>A line of text whose capitals are centred on a place.</summary>
    public abstract void TextAbout(string text, Pixel centre, TextStyle style, SKColor colour);

    /// <summary>Parallel lines at 45° across an area.</summary>
    public abstract void Hatching(ReadOnlySpan<Pixel> corners, SKColor colour, float width, float spacing);

    /// <summary>Draws with everything outside some areas left untouched; no areas leave all of the sheet open.</summary>
    public abstract void Within(IEnumerable<Pixel[]> areas, Action draw);

    /// <summary>A picture, pixel for pixel.</summary>
    /// <param name="pixels">Row by row, each 0xAABBGGRR with its colour multiplied by its opacity.</param>
    /// <param name="width">Pixels in a row.</param>
    /// <param name="origin">Its upper left corner, whole pixels.</param>
    public abstract void Raster(ReadOnlySpan<uint> pixels, int width, Pixel origin);

    /// <summary>Draws what belongs together, so that a format that knows groups can name it.</summary>
    /// <param name="name">One word.</param>
    /// <param name="draw">What is in it.</param>
    public virtual void Group(string name, Action draw) => draw();
}
