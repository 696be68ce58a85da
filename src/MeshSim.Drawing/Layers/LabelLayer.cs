using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;

namespace MeshSim.Drawing.Layers;

/// <summary>All labels of the map on light plates, with their leader lines.</summary>
internal sealed class LabelLayer : ILayer
{
    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen) => DrawAll(map.Labels, pen);

    /// <summary>Draws labels.</summary>
    public static void DrawAll(IReadOnlyList<PlacedLabel> labels, Pen pen)
    {
        foreach (PlacedLabel label in labels.Where(label => label.Request.Kind != LabelKind.Stub && label.LeaderFrom is not null))
        {
            pen.Line(label.LeaderFrom!.Value, label.LeaderTo, Tone.Plate, 3);
            pen.Line(label.LeaderFrom.Value, label.LeaderTo, Tone.Quiet, 1);
        }

        foreach (PlacedLabel label in labels)
        {
            pen.Plate(label.Box, Tone.Plate, radius: 3);
            float y = label.Box.Top + MapLabels.PadY;
            foreach (LabelLine line in label.Request.Lines)
            {
                y += line.Style.LineHeight / 2;
                pen.TextAbout(line.Text, new(label.Box.Centre.X, y), line.Style, line.Colour);
                y += line.Style.LineHeight / 2;
            }
        }
    }
}
