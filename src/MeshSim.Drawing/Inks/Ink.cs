using SkiaSharp;

namespace MeshSim.Drawing.Inks;

/// <summary>Owns every paint and font of one picture: made when first asked for, released together.</summary>
internal sealed class Ink : IDisposable
{
    private readonly Dictionary<(SKColor Colour, float Width, float Dash), SKPaint> paints = [];
    private readonly Dictionary<TextStyle, SKFont> fonts = [];
    private readonly SKTypeface regular = Load("Regular"), semiBold = Load("SemiBold");

    /// <summary>Paint that fills.</summary>
    public SKPaint Fill(SKColor colour) => Paint(colour, 0, 0);

    /// <summary>Paint that draws lines with round joints.</summary>
    /// <param name="colour">Colour.</param>
    /// <param name="width">Width, pixels.</param>
    /// <param name="dash">Length of dashes and gaps, pixels; 0 draws through.</param>
    public SKPaint Line(SKColor colour, float width, float dash = 0) => Paint(colour, width, dash);

    /// <summary>The font of a style.</summary>
    public SKFont Font(TextStyle style)
    {
        if (!fonts.TryGetValue(style, out SKFont? font))
        {
            font = new SKFont(style.IsBold ? semiBold : regular, style.SizePixels) { Subpixel = true, Hinting = SKFontHinting.None, Edging = SKFontEdging.Antialias };
            fonts.Add(style, font);
        }

        return font;
    }

    /// <summary>Width of a line of text, pixels.</summary>
    public float WidthOf(string text, TextStyle style) => Font(style).MeasureText(text);

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (SKPaint paint in paints.Values) paint.Dispose();
        foreach (SKFont font in fonts.Values) font.Dispose();
        regular.Dispose();
        semiBold.Dispose();
    }

    private SKPaint Paint(SKColor colour, float width, float dash)
    {
        if (paints.TryGetValue((colour, width, dash), out SKPaint? paint)) return paint;

        paint = new SKPaint { Color = colour, IsAntialias = true };
        if (width > 0)
        {
            paint.Style = SKPaintStyle.Stroke;
            paint.StrokeWidth = width;
            paint.StrokeJoin = SKStrokeJoin.Round;
            paint.StrokeCap = dash > 0 ? SKStrokeCap.Butt : SKStrokeCap.Round;
            if (dash > 0) paint.PathEffect = SKPathEffect.CreateDash([dash, dash], 0);
        }

        paints.Add((colour, width, dash), paint);
        return paint;
    }

    private static SKTypeface Load(string face)
    {
        using Stream stream = typeof(Ink).Assembly.GetManifestResourceStream($"fonts/{face}.ttf")
            ?? throw new InvalidOperationException($"the font {face} is not in the assembly");
        using SKData data = SKData.Create(stream);
        return SKTypeface.FromData(data);
    }
}
