using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Layers;

/// <summary>Holes in the floor or the ceiling: dashed, with a dashed diagonal.</summary>
internal sealed class StairwellLayer : ILayer
{
    /// <summary>Length of the dashes, pixels.</summary>
    public const float Dash = 7;

    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen) => DrawAll(map.Stairwells, map.Layout.Projection, pen);

    /// <summary>Draws holes.</summary>
    public static void DrawAll(IEnumerable<(Polygon Outline, bool LeadsDown)> stairwells, Projection projection, Pen pen)
    {
        foreach ((Polygon outline, bool _) in stairwells)
        {
            Pixel[] corners = projection.ToPixels(outline);
            pen.Outline(corners, isClosed: true, Tone.Paper, 3);
            pen.Outline(corners, isClosed: true, Tone.Wall, 1.6f, Dash);
            pen.Line(corners[0], corners[corners.Length / 2], Tone.Wall, 1, Dash);
        }
    }
}
