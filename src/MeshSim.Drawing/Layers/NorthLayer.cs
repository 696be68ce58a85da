using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Layers;

/// <summary>An arrow to the north below the map.</summary>
internal sealed class NorthLayer : ILayer
{
    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen) => DrawArrow(map.Coverage.Home.Parameters.NorthDegrees, map.Layout.Strip, pen);

    /// <summary>Draws the arrow.</summary>
    public static void DrawArrow(double northDegrees, PixelBox strip, Pen pen)
    {
        float turn = float.DegreesToRadians((float)northDegrees);
        Pixel north = new(MathF.Sin(turn), -MathF.Cos(turn)), east = new(-north.Y, north.X);
        Pixel centre = new(strip.Right - 34, strip.Top + 38), tip = centre.Along(north, 17), foot = centre.Along(north, -11);
        Pixel heel = centre.Along(north, -5);
        pen.Area([tip, foot.Along(east, 8), heel], Tone.Wall);
        pen.Outline([tip, foot.Along(east, 8), heel, foot.Along(east, -8)], isClosed: true, Tone.Wall, 1.3f);
        pen.TextAbout("N", centre.Along(north, 17 + 9), TextStyle.Strong, Tone.Text);
    }
}
