using System.Globalization;
using System.Net;
using System.Runtime.InteropServices;
using System.Text;
using MeshSim.Drawing.Sheets;
using SkiaSharp;

namespace MeshSim.Drawing.Inks;

/// <summary>
/// Writes SVG 1.1 by hand: text stays text in the reader's own sans-serif face, stretched to the width that the layout counted
/// on; layers stay groups that a page can switch. A canvas that writes SVG would keep neither.
/// </summary>
/// <param name="ink">Measures text.</param>
/// <param name="prefix">Begins every id, so that several pictures fit into one page.</param>
internal sealed class SvgPen(Ink ink, string prefix) : Pen
{
    private readonly StringBuilder body = new(), definitions = new();
    private int clips;

    /// <summary>The picture as a file of its own.</summary>
    /// <param name="sheet">Its size, pixels.</param>
    /// <param name="title">What it is called, read out to those who do not see it.</param>
    public string Document(PixelBox sheet, string title) => Element(
        sheet, title, FormattableString.Invariant($" xmlns=\"http://www.w3.org/2000/svg\" width=\"{sheet.Width:0.##}\" height=\"{sheet.Height:0.##}\""));

    /// <summary>The picture to stand inside a page, which decides how large it is shown.</summary>
    /// <param name="sheet">Its size, pixels.</param>
    /// <param name="title">What it is called, read out to those who do not see it.</param>
    public string Inline(PixelBox sheet, string title) => Element(sheet, title, "");

    private string Element(PixelBox sheet, string title, string attributes) => FormattableString.Invariant(
        $"""
        <svg{attributes} viewBox="0 0 {sheet.Width:0.##} {sheet.Height:0.##}" role="img" aria-labelledby="{prefix}-title" font-family="sans-serif" stroke-linejoin="round">
        <title id="{prefix}-title">{Escaped(title)}</title>
        <defs>
        {definitions}</defs>
        {body}</svg>

        """).ReplaceLineEndings("\n");

    /// <inheritdoc/>
    public override void Flood(SKColor colour) => Write($"<rect width=\"100%\" height=\"100%\" {Fill(colour)}/>");

    /// <inheritdoc/>
    public override void Line(Pixel start, Pixel end, SKColor colour, float width, float dash = 0) => Outline([start, end], isClosed: false, colour, width, dash);

    /// <inheritdoc/>
    public override void Outline(ReadOnlySpan<Pixel> points, bool isClosed, SKColor colour, float width, float dash = 0) =>
        Write($"<path d=\"{Path(points, isClosed)}\" {Stroke(colour, width, dash)}/>");

    /// <inheritdoc/>
    public override void Area(ReadOnlySpan<Pixel> corners, SKColor colour) => Write($"<path d=\"{Path(corners, isClosed: true)}\" {Fill(colour)}/>");

    /// <inheritdoc/>
    public override void Plate(PixelBox box, SKColor colour, float radius = 0) => Write($"<rect {Sides(box, radius)} {Fill(colour)}/>");

    /// <inheritdoc/>
    public override void Frame(PixelBox box, SKColor colour, float width, float radius = 0) =>
        Write($"<rect {Sides(box, radius)} {Stroke(colour, width, 0)}/>");

    /// <inheritdoc/>
    public override void Disc(Pixel centre, float radius, SKColor colour) => Write($"<circle {Round(centre, radius)} {Fill(colour)}/>");

    /// <inheritdoc/>
    public override void Ring(Pixel centre, float radius, SKColor colour, float width) => Write($"<circle {Round(centre, radius)} {Stroke(colour, width, 0)}/>");

    /// <inheritdoc/>
    public override void Text(string text, Pixel at, TextStyle style, SKColor colour)
    {
        string weight = style.IsBold ? " font-weight=\"600\"" : "";
        string stretch = text.Length > 1 ? $" textLength=\"{Number(ink.WidthOf(text, style))}\" lengthAdjust=\"spacingAndGlyphs\"" : "";
        Write($"<text x=\"{Number(at.X)}\" y=\"{Number(at.Y)}\" font-size=\"{Number(style.SizePixels)}\"{weight}{stretch} {Fill(colour)}>{Escaped(text)}</text>");
    }

    /// <inheritdoc/>
    public override void TextAbout(string text, Pixel centre, TextStyle style, SKColor colour) =>
        Text(text, new(centre.X - (ink.WidthOf(text, style) / 2), centre.Y + (style.CapitalHeight / 2)), style, colour);

    /// <inheritdoc/>
    public override void Hatching(ReadOnlySpan<Pixel> corners, SKColor colour, float width, float spacing)
    {
        float left = float.PositiveInfinity, right = float.NegativeInfinity, top = left, bottom = right;
        foreach (Pixel corner in corners)
            (left, right, top, bottom) = (Math.Min(left, corner.X), Math.Max(right, corner.X), Math.Min(top, corner.Y), Math.Max(bottom, corner.Y));
        var lines = new StringBuilder();
        for (float x = left - (bottom - top); x < right; x += spacing) lines.Append(Path([new(x, bottom), new(x + bottom - top, top)], isClosed: false));
        Write($"<path clip-path=\"url(#{Clip(Path(corners, isClosed: true))})\" d=\"{lines}\" {Stroke(colour, width, 0)}/>");
    }

    /// <inheritdoc/>
    public override void Within(IEnumerable<Pixel[]> areas, Action draw)
    {
        string outline = string.Concat(areas.Select(area => Path(area, isClosed: true)));
        Write(outline.Length == 0 ? "<g>" : $"<g clip-path=\"url(#{Clip(outline)})\">");
        draw();
        Write("</g>");
    }

    /// <inheritdoc/>
    public override void Raster(ReadOnlySpan<uint> pixels, int width, Pixel origin)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(width, pixels.Length / width, SKColorType.Rgba8888, SKAlphaType.Premul));
        pixels.CopyTo(MemoryMarshal.Cast<byte, uint>(bitmap.GetPixelSpan()));
        using SKPixmap pixmap = bitmap.PeekPixels();
        using SKData png = pixmap.Encode(Png.Small) ?? throw new InvalidOperationException("the field could not be written as PNG");
        Write($"<image x=\"{Number(origin.X)}\" y=\"{Number(origin.Y)}\" width=\"{Number(width)}\" height=\"{Number(bitmap.Height)}\" image-rendering=\"pixelated\" "
            + $"href=\"data:image/png;base64,{Convert.ToBase64String(png.AsSpan())}\"/>");
    }

    /// <inheritdoc/>
    public override void Group(string name, Action draw)
    {
        Write($"<g class=\"{name}\">");
        draw();
        Write("</g>");
    }

    private void Write(string element) => body.Append(element).Append('\n');

    private string Clip(string outline)
    {
        string id = FormattableString.Invariant($"{prefix}-{++clips}");
        definitions.Append($"<clipPath id=\"{id}\"><path d=\"{outline}\"/></clipPath>\n");
        return id;
    }

    private static string Path(ReadOnlySpan<Pixel> points, bool isClosed)
    {
        var path = new StringBuilder("M");
        foreach (Pixel point in points) path.Append(path.Length == 1 ? "" : "L").Append(Number(point.X)).Append(' ').Append(Number(point.Y));
        return path.Append(isClosed ? "Z" : "").ToString();
    }

    private static string Sides(PixelBox box, float radius) =>
        $"x=\"{Number(box.Left)}\" y=\"{Number(box.Top)}\" width=\"{Number(box.Width)}\" height=\"{Number(box.Height)}\"" + (radius > 0 ? $" rx=\"{Number(radius)}\"" : "");

    private static string Round(Pixel centre, float radius) => $"cx=\"{Number(centre.X)}\" cy=\"{Number(centre.Y)}\" r=\"{Number(radius)}\"";

    private static string Fill(SKColor colour) => $"fill=\"{Hex(colour)}\"" + Opacity("fill-opacity", colour);

    private static string Stroke(SKColor colour, float width, float dash) =>
        $"fill=\"none\" stroke=\"{Hex(colour)}\" stroke-width=\"{Number(width)}\"" + Opacity("stroke-opacity", colour)
        + (dash > 0 ? $" stroke-dasharray=\"{Number(dash)}\"" : " stroke-linecap=\"round\"");

    private static string Opacity(string name, SKColor colour) => colour.Alpha == 255 ? "" : $" {name}=\"{Number(colour.Alpha / 255f)}\"";

    private static string Hex(SKColor colour) => FormattableString.Invariant($"#{colour.Red:x2}{colour.Green:x2}{colour.Blue:x2}");

    private static string Number(float value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Escaped(string text) => WebUtility.HtmlEncode(text);
}
