using System.Globalization;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using SkiaSharp;

namespace MeshSim.OpenData.Tests.Accuracy.Pictures;

/// <summary>Where on a plan levels were predicted too high or too low, on average over the transmitters.</summary>
internal static class ResidualPicture
{
    private const float Margin = 36, Top = 84, Column = 190, PlanPixels = 760, MostPixelsPerMetre = 72;

    // Cells of the flat are half a metre wide, and their middle differs by what each receiver heard; points elsewhere lie further apart.
    private const double CellMetres = 0.5;

    /// <summary>The ends of the scale, dB.</summary>
    private const double ScaleDb = 12, LegendStepDb = 4;

    private static readonly SKColor TooHigh = new(0xB2, 0x18, 0x2B), Right = new(0xF4, 0xF1, 0xEA), TooLow = new(0x1B, 0x5E, 0xA8);
    private static readonly SKColor Wall = new(0x37, 0x3D, 0x45), Edge = new(0x8C, 0x8A, 0x84);

    /// <summary>The picture as a PNG file.</summary>
    /// <param name="building">The building.</param>
    /// <param name="subtitle">How levels were predicted.</param>
    /// <param name="errors">Place and predicted less measured level, dB.</param>
    public static byte[] Png(MeasuredBuilding building, string subtitle, IEnumerable<(Position Place, double ErrorDb)> errors)
    {
        (PlanPoint Place, double ErrorDb)[] means = [.. errors.GroupBy(CellOf).Select(group => (MiddleOf(group.Select(error => error.Place.Plan)), group.Average(error => error.ErrorDb)))];
        PlanPoint[] all = [.. means.Select(mean => mean.Place), .. building.Plan.Storeys.SelectMany(storey => storey.Walls).SelectMany(wall => new[] { wall.Start, wall.End })];
        double left = all.Min(point => point.XMetres), right = all.Max(point => point.XMetres), low = all.Min(point => point.YMetres), high = all.Max(point => point.YMetres);
        float scale = Math.Min(MostPixelsPerMetre, PlanPixels / (float)Math.Max(right - left, high - low));
        float width = (float)(right - left) * scale, height = (float)(high - low) * scale;
        return PaintedSheet.Png(building.Name, (int)(width + (2 * Margin) + Column), (int)Math.Max(height + Top + Margin, 420), pen =>
        {
            pen.Text(building.Name, new(24, 38), TextStyle.Title with { SizePixels = 22 }, Tone.Text);
            pen.Text(subtitle, new(24, 62), TextStyle.Body, Tone.Text);
            foreach ((PlanPoint place, double errorDb) in means) Dot(pen, At(place), Math.Clamp(scale * 0.17f, 3.5f, 10), errorDb);
            foreach (Wall wall in building.Plan.Storeys.SelectMany(storey => storey.Walls)) pen.Line(At(wall.Start), At(wall.End), Wall, 3);
            foreach (PlanPoint sender in building.Links.Select(link => link.From.Plan).Distinct()) Mark(pen, At(sender));
            DrawLegend(pen, Margin + width + 30);
        });

        Pixel At(PlanPoint point) => new(Margin + (float)((point.XMetres - left) * scale), Top + (float)((high - point.YMetres) * scale));
    }

    private static (double, double) CellOf((Position Place, double ErrorDb) error) =>
        (Math.Floor(error.Place.Plan.XMetres / CellMetres), Math.Floor(error.Place.Plan.YMetres / CellMetres));

    private static PlanPoint MiddleOf(IEnumerable<PlanPoint> places)
    {
        PlanPoint[] all = [.. places];
        return PlanPoint.FromMetres(all.Average(place => place.XMetres), all.Average(place => place.YMetres));
    }

    // The ends of the scale hold all that lies beyond.
    private static string EndOf(double errorDb) => errorDb switch { ScaleDb => " or more, too high", -ScaleDb => " or less, too low", _ => "" };

    // What is right has nearly the colour of the paper: an edge keeps it in sight.
    private static void Dot(Pen pen, Pixel at, float radius, double errorDb)
    {
        pen.Disc(at, radius, ColourOf(errorDb));
        pen.Ring(at, radius, Edge, 0.6f);
    }

    private static void Mark(Pen pen, Pixel at)
    {
        pen.Disc(at, 7, Tone.Paper);
        pen.Ring(at, 7, Tone.Text, 2);
        pen.Disc(at, 2.5f, Tone.Text);
    }

    private static void DrawLegend(Pen pen, float left)
    {
        pen.Text("Predicted less measured, mean", new(left, Top + 10), TextStyle.Small, Tone.Text);
        float y = Top + 34;
        for (double errorDb = ScaleDb; errorDb >= -ScaleDb; errorDb -= LegendStepDb, y += 24)
        {
            Dot(pen, new(left + 8, y), 8, errorDb);
            pen.Text(errorDb.ToString("+0 dB;−0 dB;0 dB", CultureInfo.InvariantCulture) + EndOf(errorDb), new(left + 26, y + 5), TextStyle.Body, Tone.Text);
        }

        Mark(pen, new(left + 8, y + 12));
        pen.Text("fixed end", new(left + 26, y + 17), TextStyle.Body, Tone.Text);
    }

    private static SKColor ColourOf(double errorDb)
    {
        SKColor end = errorDb > 0 ? TooHigh : TooLow;
        double share = Math.Min(1, Math.Abs(errorDb) / ScaleDb);
        byte Mix(byte from, byte to) => (byte)Math.Round(from + (share * (to - from)));
        return new(Mix(Right.Red, end.Red), Mix(Right.Green, end.Green), Mix(Right.Blue, end.Blue));
    }
}
