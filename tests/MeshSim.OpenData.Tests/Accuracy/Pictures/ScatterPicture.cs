using System.Globalization;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;
using SkiaSharp;

namespace MeshSim.OpenData.Tests.Accuracy.Pictures;

/// <summary>Measured levels over predicted ones: a perfect prediction lies on the diagonal.</summary>
internal static class ScatterPicture
{
    private const int Width = 640, Height = 672;
    private const float Left = 84, Top = 116, Plot = 500, StepDbm = 10;

    // Beyond so many dots they would run together; then each is smaller and fainter.
    private const int ManyDots = 5000;

    private static readonly SKColor Few = new(0x1F, 0x5A, 0x96, 130), Many = new(0x1F, 0x5A, 0x96, 24), Grid = new(0xDD, 0xDA, 0xD2), Band = new(0xB4, 0x3A, 0x2C, 170);

    /// <summary>The picture as a PNG file.</summary>
    /// <param name="title">What was measured.</param>
    /// <param name="subtitle">How it was predicted.</param>
    /// <param name="points">Predicted and measured level of each link, dBm.</param>
    public static byte[] Png(string title, string subtitle, IReadOnlyList<(double PredictedDbm, double MeasuredDbm)> points)
    {
        double low = Math.Floor(points.Min(point => Math.Min(point.PredictedDbm, point.MeasuredDbm)) / StepDbm) * StepDbm;
        double high = Math.Ceiling(points.Max(point => Math.Max(point.PredictedDbm, point.MeasuredDbm)) / StepDbm) * StepDbm;
        return PaintedSheet.Png(title, Width, Height, pen =>
        {
            pen.Text(title, new(24, 38), TextStyle.Title with { SizePixels = 22 }, Tone.Text);
            pen.Text(subtitle, new(24, 62), TextStyle.Body, Tone.Text);
            DrawGrid(pen, low, high);
            (float radius, SKColor colour) = points.Count > ManyDots ? (1.6f, Many) : (2.6f, Few);
            foreach ((double predicted, double measured) in points) pen.Disc(PlaceOf(predicted, measured), radius, colour);
            pen.Line(PlaceOf(low, low), PlaceOf(high, high), Tone.Text, 1.5f);
            foreach (double off in (double[])[-StepDbm, StepDbm])
                pen.Line(PlaceOf(Math.Max(low, low - off), Math.Max(low, low + off)), PlaceOf(Math.Min(high, high - off), Math.Min(high, high + off)), Band, 1, dash: 5);
        });

        Pixel PlaceOf(double predicted, double measured) => new(
            Left + (float)((predicted - low) / (high - low) * Plot), Top + Plot - (float)((measured - low) / (high - low) * Plot));

        void DrawGrid(Pen pen, double from, double to)
        {
            for (double level = from; level <= to; level += StepDbm)
            {
                pen.Line(PlaceOf(level, from), PlaceOf(level, to), Grid, 1);
                pen.Line(PlaceOf(from, level), PlaceOf(to, level), Grid, 1);
                string figure = level.ToString("0;−0", CultureInfo.InvariantCulture);
                pen.TextAbout(figure, PlaceOf(level, from) with { Y = Top + Plot + 16 }, TextStyle.Small, Tone.Text);
                pen.TextAbout(figure, PlaceOf(from, level) with { X = Left - 22 }, TextStyle.Small, Tone.Text);
            }

            pen.TextAbout("predicted, dBm", new(Left + (Plot / 2), Top + Plot + 40), TextStyle.Body, Tone.Text);
            pen.Text("measured, dBm", new(24, Top - 16), TextStyle.Body, Tone.Text);
            pen.Text("line: as measured; dashed: 10 dB off", new(Left + Plot - 232, Top - 16), TextStyle.Small, Tone.Quiet);
        }
    }
}
