using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Layers;

/// <summary>What the sheet shows, above; what made it, below, without a date so that equal input gives equal sheets.</summary>
internal sealed class TitleLayer : ILayer
{
    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen)
    {
        PixelBox title = map.Layout.Title, footer = map.Layout.Footer;
        pen.Text(map.Words.Title, new(title.Left, title.Top + 24), TextStyle.Title, Tone.Text);
        pen.Text(map.Words.Subtitle, new(title.Left, title.Top + 50), TextStyle.Subtitle, Tone.Quiet);
        pen.Text(map.Words.Provenance, new(footer.Left, footer.Bottom - 6), TextStyle.Small, Tone.Quiet);
        pen.Frame(map.Layout.Map, Tone.Quiet, 1);
    }
}
