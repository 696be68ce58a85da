using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Walls;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing.Layers;

/// <summary>Doors as a gap with a leaf and its swing, windows as two lines across a light gap.</summary>
internal sealed class OpeningLayer : ILayer
{
    private const int SwingSteps = 12;

    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen) => DrawAll(map.Storey, map.Coverage.Home, map.Layout.Projection, pen);

    /// <summary>Draws the openings of a storey.</summary>
    public static void DrawAll(Storey storey, Home home, Projection projection, Pen pen)
    {
        foreach (Wall wall in storey.Walls)
        {
            WallRun run = WallRun.Of(wall, home, projection);
            foreach (Opening opening in wall.Openings)
            {
                float from = projection.Length(opening.OffsetMetres), width = projection.Length(opening.WidthMetres);
                if (opening.Kind == OpeningKind.Window) DrawWindow(run, from, from + width, pen);
                else DrawDoor(run, from, width, SideOf(run, from + (width / 2), storey, projection), pen);
            }
        }
    }

    private static void DrawWindow(WallRun run, float from, float to, Pen pen)
    {
        Pixel[] corners = run.Stretch(from, to);
        float sixth = run.ThicknessPixels / 6;
        pen.Area(corners, Tone.Paper);
        pen.Outline(corners, isClosed: true, Tone.Wall, 1.2f);
        pen.Line(run.At(from, sixth), run.At(to, sixth), Tone.Wall, 1);
        pen.Line(run.At(from, -sixth), run.At(to, -sixth), Tone.Wall, 1);
    }

    private static void DrawDoor(WallRun run, float hinge, float width, int side, Pen pen)
    {
        Pixel[] swing =
        [
            .. Enumerable.Range(0, SwingSteps + 1).Select(step =>
            {
                float angle = step * MathF.PI / 2 / SwingSteps;
                return run.At(hinge + (width * MathF.Cos(angle)), side * width * MathF.Sin(angle));
            }),
        ];
        pen.Outline(swing, isClosed: false, Tone.Quiet, 1);
        pen.Line(run.At(hinge, 0), swing[^1], Tone.Paper, 4);
        pen.Line(run.At(hinge, 0), swing[^1], Tone.Wall, 2.2f);
    }

    /// <summary>A door swings to its left unless that is outside and the other side is not.</summary>
    private static int SideOf(WallRun run, float middle, Storey storey, Projection projection)
    {
        float step = run.ThicknessPixels + 4;
        bool HasRoom(int side) => storey.RoomAt(projection.ToPlan(run.At(middle, side * step))) is not null;
        return HasRoom(1) || !HasRoom(-1) ? 1 : -1;
    }
}
