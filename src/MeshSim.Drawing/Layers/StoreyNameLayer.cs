using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Layers;

/// <summary>The name of a storey on a band above its map, and the frame of the map.</summary>
internal sealed class StoreyNameLayer : ILayer
{
    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen)
    {
        PixelBox frame = map.Layout.Map, band = new(frame.Left, frame.Top - HouseLayout.CaptionHeight, frame.Right, frame.Top);
        pen.Plate(band, Tone.Band);
        pen.Text(map.Storey.Name.Value, new(band.Left + 8, band.Bottom - 7), TextStyle.Heading, Tone.Text);
        pen.Frame(band, Tone.Quiet, 1);
        pen.Frame(frame, Tone.Quiet, 1);
    }
}
