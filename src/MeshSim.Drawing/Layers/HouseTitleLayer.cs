using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Layers;

/// <summary>What a sheet with several storeys shows, above; what made it, below.</summary>
internal sealed class HouseTitleLayer : ILayer
{
    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen)
    {
        PixelBox title = map.Layout.Title, footer = map.Layout.Footer;
        pen.Text(map.Words.Title, new(title.Left, title.Top + 18), TextStyle.SheetTitle, Tone.Text);
        pen.Text(map.Words.Subtitle, new(title.Left, title.Top + 38), TextStyle.Body, Tone.Quiet);
        pen.Text(map.Words.Provenance, new(footer.Left, footer.Bottom - 6), TextStyle.Small, Tone.Quiet);
    }
}
