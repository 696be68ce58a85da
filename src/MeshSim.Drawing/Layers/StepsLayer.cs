using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Palettes;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Layers;

/// <summary>The steps of the scale in one row below the maps, lowest first, each with its range; hatched as on the maps.</summary>
internal sealed class StepsLayer : ILayer
{
    private const float SwatchHeight = 16;

    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen)
    {
        PixelBox row = map.Layout.Column;
        float width = row.Width / map.Scale.Classes.Length, top = row.Top + 10;
        for (int i = 0; i < map.Scale.Classes.Length; i++)
        {
            MarginClass step = map.Scale.Classes[i];
            PixelBox swatch = new(row.Left + (i * width), top, row.Left + ((i + 1) * width), top + SwatchHeight);
            Pixel[] corners = [new(swatch.Left, swatch.Top), new(swatch.Right, swatch.Top), new(swatch.Right, swatch.Bottom), new(swatch.Left, swatch.Bottom)];
            pen.Area(corners, step.Colour);
            if (step.IsBelowDesign) pen.Hatching(corners, Tone.Hatch, 1.6f, HatchLayer.Period);
            pen.Frame(swatch, Tone.Quiet, 1);
            pen.TextAbout(step.Range + (i == 0 ? " dB" : ""), new(swatch.Centre.X, swatch.Bottom + 10), TextStyle.Small, Tone.Text);
        }
    }
}
