using System.Runtime.InteropServices;
using MeshSim.Drawing.Sheets;
using SkiaSharp;

namespace MeshSim.Drawing.Inks;

/// <summary>Draws on a canvas: a bitmap or a page of a document. The only place that touches the canvas.</summary>
/// <param name="canvas">The sheet.</param>
/// <param name="ink">Paints and fonts.</param>
internal sealed class CanvasPen(SKCanvas canvas, Ink ink) : Pen
{
    /// <summary>A pen whose pixels are larger or smaller than the canvas's own.</summary>
    public static CanvasPen Scaled(SKCanvas canvas, Ink ink, float scale)
    {
        canvas.Scale(scale);
        return new(canvas, ink);
    }

    /// <inheritdoc/>
    public override void Flood(SKColor colour) => canvas.Clear(colour);

    /// <inheritdoc/>
    public override void Line(Pixel start, Pixel end, SKColor colour, float width, float dash = 0) =>
        canvas.DrawLine(start.X, start.Y, end.X, end.Y, ink.Line(colour, width, dash));

    /// <inheritdoc/>
    public override void Outline(ReadOnlySpan<Pixel> points, bool isClosed, SKColor colour, float width, float dash = 0)
    {
        using SKPath path = PathOf(points, isClosed);
        canvas.DrawPath(path, ink.Line(colour, width, dash));
    }

    /// <inheritdoc/>
    public override void Area(ReadOnlySpan<Pixel> corners, SKColor colour)
    {
        using SKPath path = PathOf(corners, isClosed: true);
        canvas.DrawPath(path, ink.Fill(colour));
    }

    /// <inheritdoc/>
    public override void Plate(PixelBox box, SKColor colour, float radius = 0) =>
        canvas.DrawRoundRect(RectOf(box), radius, radius, ink.Fill(colour));

    /// <inheritdoc/>
    public override void Frame(PixelBox box, SKColor colour, float width, float radius = 0) =>
        canvas.DrawRoundRect(RectOf(box), radius, radius, ink.Line(colour, width));

    /// <inheritdoc/>
    public override void Disc(Pixel centre, float radius, SKColor colour) => canvas.DrawCircle(centre.X, centre.Y, radius, ink.Fill(colour));

    /// <inheritdoc/>
    public override void Ring(Pixel centre, float radius, SKColor colour, float width) =>
        canvas.DrawCircle(centre.X, centre.Y, radius, ink.Line(colour, width));

    /// <inheritdoc/>
    public override void Text(string text, Pixel at, TextStyle style, SKColor colour) =>
        canvas.DrawText(text, at.X, at.Y, SKTextAlign.Left, ink.Font(style), ink.Fill(colour));

    /// <inheritdoc/>
    public override void TextAbout(string text, Pixel centre, TextStyle style, SKColor colour) =>
        canvas.DrawText(text, centre.X, centre.Y + (style.CapitalHeight / 2), SKTextAlign.Center, ink.Font(style), ink.Fill(colour));

    /// <inheritdoc/>
    public override void Hatching(ReadOnlySpan<Pixel> corners, SKColor colour, float width, float spacing)
    {
        using SKPath area = PathOf(corners, isClosed: true);
        SKRect bounds = area.Bounds;
        canvas.Save();
        canvas.ClipPath(area, SKClipOperation.Intersect, antialias: true);
        for (float x = bounds.Left - bounds.Height; x < bounds.Right; x += spacing)
            Line(new(x, bounds.Bottom), new(x + bounds.Height, bounds.Top), colour, width);
        canvas.Restore();
    }

    /// <inheritdoc/>
    public override void Within(IEnumerable<Pixel[]> areas, Action draw)
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

    /// <inheritdoc/>
    public override void Raster(ReadOnlySpan<uint> pixels, int width, Pixel origin)
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
