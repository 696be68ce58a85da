using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Routes;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;

namespace MeshSim.Drawing.Layers;

/// <summary>The links that routes use, each with an arrow towards the coordinator; stubs to other storeys end in their label.</summary>
internal sealed class RouteLayer : ILayer
{
    private const float Width = 1.9f, CasingWidth = 4.6f, ArrowLength = 11, ArrowHalfWidth = 4.6f;

    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen)
    {
        Dictionary<DeviceId, Pixel> places = map.Marks.Devices.ToDictionary(mark => mark.Device.Id, mark => mark.Centre);
        foreach (RouteLine line in map.Routes.Lines) DrawLink(places[line.From], places[line.To], Mark.Radius, Mark.Radius, pen);
        foreach (PlacedLabel label in map.Labels.Where(label => label.Request.Kind == LabelKind.Stub))
        {
            if (label.LeaderFrom is not { } device) continue;
            if (label.Request.LeaderPointsBack) DrawLink(label.LeaderTo, device, 0, Mark.Radius, pen);
            else DrawLink(device, label.LeaderTo, Mark.Radius, 0, pen);
        }
    }

    /// <summary>A line from one place to another, short of both by what covers them, with an arrow a little past its middle.</summary>
    public static void DrawLink(Pixel from, Pixel to, float fromReach, float toReach, Pen pen, float dash = 0)
    {
        Pixel direction = from.DirectionTo(to);
        Pixel start = from.Along(direction, fromReach), end = to.Along(direction, -toReach);
        DrawStroke(from, to, fromReach, toReach, pen, dash);
        DrawArrow(start, end, pen);
    }

    /// <summary>The line alone.</summary>
    public static void DrawStroke(Pixel from, Pixel to, float fromReach, float toReach, Pen pen, float dash)
    {
        Pixel direction = from.DirectionTo(to);
        Pixel start = from.Along(direction, fromReach), end = to.Along(direction, -toReach);
        pen.Line(start, end, Tone.Plate, CasingWidth);
        pen.Line(start, end, Tone.Route, Width, dash);
    }

    /// <summary>The arrow alone, a little past the middle of a line.</summary>
    public static void DrawArrow(Pixel start, Pixel end, Pen pen)
    {
        Pixel direction = start.DirectionTo(end);
        Pixel tip = start.Towards(end, 0.5f).Along(direction, ArrowLength / 2), foot = tip.Along(direction, -ArrowLength);
        Pixel across = new(direction.Y, -direction.X);
        Pixel[] arrow = [tip, foot.Along(across, ArrowHalfWidth), foot.Along(across, -ArrowHalfWidth)];
        pen.Outline(arrow, isClosed: true, Tone.Plate, 2);
        pen.Area(arrow, Tone.Route);
    }
}
