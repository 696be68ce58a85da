using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Margins;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Layers;

/// <summary>Lines of equal margin, the design margin heavier.</summary>
internal sealed class ContourLayer : ILayer
{
    /// <summary>Widths, pixels.</summary>
    public const float PlainWidth = 1.1f, DesignWidth = 2.6f;

    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen) =>
        pen.Within(RoomMask.OutlinesOf(map.Storey, map.Layout.Projection), () =>
        {
            foreach (Contour contour in map.Contours)
            {
                Pixel[] line = [.. contour.Points.Select(map.Layout.Projection.ToPixel)];
                bool isDesign = contour.LevelDb == map.Scale.HeavyDb;
                pen.Outline(line, contour.IsClosed, Tone.Contour, isDesign ? DesignWidth : PlainWidth);
            }
        });
}
