using System.Collections.Immutable;
using System.Text;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Layers;
using MeshSim.Drawing.Sheets;
using SkiaSharp;

namespace MeshSim.Drawing;

/// <summary>Draws layers one over the other and makes a file of it.</summary>
/// <param name="sheet">The sheet, from its upper left corner.</param>
/// <param name="title">What the picture is called.</param>
/// <param name="steps">What is drawn, from the bottom to the top.</param>
/// <param name="ink">Paints and fonts.</param>
internal sealed class SheetPainter(PixelBox sheet, string title, IReadOnlyList<(string Name, Action<Pen> Draw)> steps, Ink ink)
{
    /// <summary>Points per pixel: a page shows a pixel as a ninety-sixth of an inch, as web pages do.</summary>
    private const float PointsPerPixel = 0.75f;

    /// <summary>Begins the ids of a picture that has a file of its own.</summary>
    private const string OwnFile = "map";

    /// <summary>All layers over one map.</summary>
    public static SheetPainter Of(MapContents contents, ImmutableArray<ILayer> layers, Ink ink) =>
        new(contents.Layout.Sheet, contents.Words.Title, [.. layers.Select(layer => Step(layer, contents))], ink);

    /// <summary>The picture as a file.</summary>
    /// <param name="format">Which kind.</param>
    /// <param name="scale">Pixels of a PNG file for each pixel of the layout; other formats have no pixels.</param>
    public byte[] File(PictureFormat format, int scale = 1) => format switch
    {
        PictureFormat.Svg => Encoding.UTF8.GetBytes(Drawn(OwnFile).Document(sheet, title)),
        PictureFormat.Pdf => Pdf(),
        _ => PngFile(scale),
    };

    /// <summary>The picture as SVG to stand inside a page.</summary>
    /// <param name="prefix">Begins its ids.</param>
    public string Inline(string prefix) => Drawn(prefix).Inline(sheet, title);

    private SvgPen Drawn(string prefix)
    {
        var pen = new SvgPen(ink, prefix);
        Draw(pen);
        return pen;
    }

    private byte[] PngFile(int scale)
    {
        using var bitmap = new SKBitmap(new SKImageInfo((int)sheet.Width * scale, (int)sheet.Height * scale, SKColorType.Rgba8888, SKAlphaType.Premul));
        using (var canvas = new SKCanvas(bitmap))
            Draw(CanvasPen.Scaled(canvas, ink, scale));

        using SKPixmap pixels = bitmap.PeekPixels();
        using SKData png = pixels.Encode(Png.Fast) ?? throw new InvalidOperationException("the picture could not be written as PNG");
        return png.ToArray();
    }

    /// <summary>No date goes in, so the same picture makes the same bytes.</summary>
    private byte[] Pdf()
    {
        using var stream = new MemoryStream();
        using (SKDocument document = SKDocument.CreatePdf(stream, new SKDocumentPdfMetadata { Title = title, Creator = "MeshSim" }))
        {
            SKCanvas page = document.BeginPage(sheet.Width * PointsPerPixel, sheet.Height * PointsPerPixel);
            Draw(CanvasPen.Scaled(page, ink, PointsPerPixel));
            document.EndPage();
            document.Close();
        }

        return stream.ToArray();
    }

    private void Draw(Pen pen)
    {
        foreach ((string name, Action<Pen> draw) in steps) pen.Group(name, () => draw(pen));
    }

    /// <summary>A layer over a map as a step, with a name such as "heat" for the heat layer.</summary>
    public static (string Name, Action<Pen> Draw) Step(ILayer layer, MapContents contents) =>
        (layer.GetType().Name.Replace("Layer", "", StringComparison.Ordinal).ToLowerInvariant(), pen => layer.Draw(contents, pen));
}
