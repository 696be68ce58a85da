using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing.Layers;

/// <summary>Big things that block radio: light boxes with close hatching.</summary>
internal sealed class ObjectLayer : ILayer
{
    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen) => DrawAll(map.Storey, map.Layout.Projection, pen);

    /// <summary>Draws the objects of a storey.</summary>
    public static void DrawAll(Storey storey, Projection projection, Pen pen)
    {
        foreach (BlockingObject thing in storey.Objects)
        {
            Pixel[] corners = projection.ToPixels(thing.Footprint);
            pen.Area(corners, Tone.Plate);
            pen.Hatching(corners, Tone.Quiet, 1, 6);
            pen.Outline(corners, isClosed: true, Tone.Wall, 1.8f);
        }
    }
}
