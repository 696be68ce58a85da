using MeshSim.Drawing.Inks;
using SkiaSharp;

namespace MeshSim.OpenData.Tests.Accuracy.Pictures;

/// <summary>A sheet of paper that becomes a PNG file.</summary>
internal static class PaintedSheet
{
    /// <summary>Draws and encodes. The same drawing gives the same bytes on one platform.</summary>
    /// <param name="width">Pixels across.</param>
    /// <param name="height">Pixels down.</param>
    /// <param name="draw">Draws on the paper.</param>
    public static byte[] Png(int width, int height, Action<Pen> draw)
    {
        using var ink = new Ink();
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Premul));
        using (var canvas = new SKCanvas(bitmap))
        {
            var pen = new Pen(canvas, ink);
            pen.Flood(Tone.Paper);
            draw(pen);
        }

        using SKPixmap pixels = bitmap.PeekPixels();
        using SKData png = pixels.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.AllFilters, 9))
            ?? throw new InvalidOperationException("the picture could not be written as PNG");
        return png.ToArray();
    }
}
