using System.Runtime.InteropServices;
using MeshSim.Drawing.Sheets;
using SkiaSharp;

namespace MeshSim.Drawing.Inks;

/// <summary>Draws on one sheet, in pixels. The only place that touches the canvas.</summary>
/// <param name="canvas">The sheet.</param>
/// <param name="ink">Paints and fonts.</param>
internal sealed class Pen(SKCanvas canvas, Ink ink)
{
    /// <summary>Fills the whole sheet.</summary>
    public void Flood(SKColor colour) => canvas.Clear(colour);

    /// <summary>A straight line.</summary>
    public void Line(Pixel start, Pixel end, SKColor colour, float width, float dash = 0) =>
        canvas.DrawLine(start.X, start.Y, end.X, end.Y, ink.Line(colour, width, dash));

    /// <summary>A line through several points.</summary>
    public void Outline(ReadOnlySpan<Pixel> points, bool isClosed, SKColor colour, float width, float dash = 0)
    {
        using SKPath path = PathOf(points, isClosed);
        canvas.DrawPath(path, ink.Line(colour, width, dash));
    }

    /// <summary>A filled area.</summary>
    public void Area(ReadOnlySpan<Pixel> corners, SKColor colour)
    {
        using SKPath path = PathOf(corners, isClosed: true);
        canvas.DrawPath(path, ink.Fill(colour));
    }

    /// <summary>A filled box with rounded corners.</summary>
    public void Plate(PixelBox box, SKColor colour, float radius = 0) =>
        canvas.DrawRoundRect(RectOf(box), radius, radius, ink.Fill(colour));

    /// <summary>The sides of a box.</summary>
    public void Frame(PixelBox box, SKColor colour, float width, float radius = 0) =>
        canvas.DrawRoundRect(RectOf(box), radius, radius, ink.Line(colour, width));

    /// <summary>A filled circle.</summary>
    public void Disc(Pixel centre, float radius, SKColor colour) => canvas.DrawCircle(centre.X, centre.Y, radius, ink.Fill(colour));

    /// <summary>A circle.</summary>
    public void Ring(Pixel centre, float radius, SKColor colour, float width) =>
        canvas.DrawCircle(centre.X, centre.Y, radius, ink.Line(colour, width));

    /// <summary>A line of text that starts at a place on its base line.</summary>
    public void Text(string text, Pixel at, TextStyle style, SKColor colour) =>
        canvas.DrawText(text, at.X, at.Y, SKTextAlign.Left, ink.Font(style), ink.Fill(colour));

    /// <summary>A line of text whose capitals are centred on a place.</summary>
    public void TextAbout(string text, Pixel centre, TextStyle style, SKColor colour) =>
        canvas.DrawText(text, centre.X, centre.Y + (style.CapitalHeight / 2), SKTextAlign.Center, ink.Font(style), ink.Fill(colour));

    /// <summary>Parallel lines at 45° across an area.</summary>
    public void Hatching(ReadOnlySpan<Pixel> corners, SKColor colour, float width, float spacing)
    {
        using SKPath area = PathOf(corners, isClosed: true);
        SKRect bounds = area.Bounds;
        canvas.Save();
        canvas.ClipPath(area, SKClipOperation.Intersect, antialias: true);
        for (float x = bounds.Left - bounds.Height; x < bounds.Right; x += spacing)
            Line(new(x, bounds.Bottom), new(x + bounds.Height, bounds.Top), colour, width);
        canvas.Restore();
    }

    /// <summary>Draws with everything outside some areas left untouched; no areas leave all of the sheet open.</summary>
    public void Within(IEnumerable<Pixel[]> areas, Action draw)
    {
        using var builder = new SKPathBuilder();
        foreach (Pixel[] area in areas)
        {
            using SKPath path = PathOf(area, isClosed: true);
            builder.AddPath(path);
        }

        using SKPath all = builder.Detach();
        canvas.Save();
        if (!all.IsEmpty) canvas.ClipPath(all, SKClipOperation.Intersect, antialias: true);
        draw();
        canvas.Restore();
    }

    /// <summary>A picture, pixel for pixel.</summary>
    /// <param name="pixels">Row by row, each 0xAABBGGRR with its colour multiplied by its opacity.</param>
    /// <param name="width">Pixels in a row.</param>
    /// <param name="origin">Its upper left corner, whole pixels.</param>
    public void Raster(ReadOnlySpan<uint> pixels, int width, Pixel origin)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(width, pixels.Length / width, SKColorType.Rgba8888, SKAlphaType.Premul));
        pixels.CopyTo(MemoryMarshal.Cast<byte, uint>(bitmap.GetPixelSpan()));
        bitmap.SetImmutable();
        using SKImage image = SKImage.FromBitmap(bitmap);
        canvas.DrawImage(image, origin.X, origin.Y, new SKSamplingOptions(SKFilterMode.Nearest));
    }

    private static SKPath PathOf(ReadOnlySpan<Pixel> points, bool isClosed)
    {
        using var builder = new SKPathBuilder();
        builder.MoveTo(points[0].X, points[0].Y);
        foreach (Pixel point in points[1..]) builder.LineTo(point.X, point.Y);
        if (isClosed) builder.Close();
        return builder.Detach();
    }

    private static SKRect RectOf(PixelBox box) => new(box.Left, box.Top, box.Right, box.Bottom);
}
