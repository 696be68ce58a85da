using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Layers;

/// <summary>Samples of the map's signs, for the legend.</summary>
internal static class SignSample
{
    /// <summary>Draws a sign in a box.</summary>
    public static void Draw(Sign sign, PixelBox box, Pen pen)
    {
        Pixel left = new(box.Left, box.Centre.Y), right = new(box.Right, box.Centre.Y);
        switch (sign)
        {
            case Sign.DesignContour:
                pen.Line(left, right, Tone.Contour, ContourLayer.DesignWidth);
                break;
            case Sign.Contour:
                pen.Line(left, right, Tone.Contour, ContourLayer.PlainWidth);
                break;
            case Sign.Route:
                RouteLayer.DrawLink(left, right, 0, 0, pen);
                break;
            case Sign.Stub:
                RouteLayer.DrawLink(left, right.Along(new(-1, 0), 14), 0, 0, pen);
                pen.TextAbout("▲", right.Along(new(-1, 0), 6), TextStyle.Label, Tone.Route);
                break;
            case Sign.Stairwell:
                pen.Line(left, right, Tone.Wall, 1.6f, StairwellLayer.Dash);
                break;
            case Sign.Unreached:
                DeviceSigns.DrawWarning(box.Centre, pen);
                break;
            case Sign.Repeater or Sign.Site:
                RepeaterLayer.DrawNumber(1, box.Centre, pen);
                break;
        }
    }
}
