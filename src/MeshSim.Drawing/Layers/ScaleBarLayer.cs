using System.Globalization;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Layers;

/// <summary>A bar of a round number of metres below the map.</summary>
internal sealed class ScaleBarLayer : ILayer
{
    private const float LongestPixels = 260, BarHeight = 7;
    private const int Parts = 4;

    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen) => DrawBar(map.Layout.Projection, map.Layout.Strip, pen);

    /// <summary>Draws the bar.</summary>
    public static void DrawBar(Projection projection, PixelBox strip, Pen pen)
    {
        int metres = LengthMetres(projection);
        float left = strip.Left, top = strip.Top + 18, part = projection.Length(metres) / Parts;
        for (int i = 0; i < Parts; i++)
            pen.Plate(new(left + (i * part), top, left + ((i + 1) * part), top + BarHeight), i % 2 == 0 ? Tone.Wall : Tone.Paper);
        pen.Frame(new(left, top, left + (Parts * part), top + BarHeight), Tone.Wall, 1);

        pen.Text("0", new(left, top + BarHeight + 15), TextStyle.Small, Tone.Text);
        pen.TextAbout((metres / 2.0).ToString("0.#", CultureInfo.InvariantCulture), new(left + (2 * part), top + BarHeight + 10.5f), TextStyle.Small, Tone.Text);
        pen.TextAbout(metres.ToString(CultureInfo.InvariantCulture) + " m", new(left + (4 * part), top + BarHeight + 10.5f), TextStyle.Small, Tone.Text);
    }

    /// <summary>The longest of 1, 2, 5, 10, 20, … m that fits.</summary>
    public static int LengthMetres(Projection projection)
    {
        int[] lengths = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
        return lengths.LastOrDefault(metres => projection.Length(metres) <= LongestPixels, 1);
    }
}
