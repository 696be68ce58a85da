using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Layers;
using SkiaSharp;

namespace MeshSim.Drawing;

/// <summary>Draws layers one over the other and makes a PNG file of it.</summary>
internal static class SheetPainter
{
    /// <summary>Fast settings: a picture of a plan hardly grows by them.</summary>
    private static readonly SKPngEncoderOptions Encoding = new(SKPngEncoderFilterFlags.Sub, 1);

    /// <summary>The picture as a PNG file.</summary>
    public static byte[] Png(MapContents contents, ImmutableArray<ILayer> layers, Ink ink)
    {
        using var bitmap = new SKBitmap(new SKImageInfo((int)contents.Layout.Sheet.Width, (int)contents.Layout.Sheet.Height, SKColorType.Rgba8888, SKAlphaType.Premul));
        using (var canvas = new SKCanvas(bitmap))
        {
            var pen = new Pen(canvas, ink);
            foreach (ILayer layer in layers) layer.Draw(contents, pen);
        }

        using SKPixmap pixels = bitmap.PeekPixels();
        using SKData png = pixels.Encode(Encoding) ?? throw new InvalidOperationException("the picture could not be written as PNG");
        return png.ToArray();
    }
}
