using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;

namespace MeshSim.Drawing.Layers;

/// <summary>Recommended repeaters: numbered hexagons.</summary>
internal sealed class RepeaterLayer : ILayer
{
    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen)
    {
        foreach (RepeaterMark mark in map.Marks.Repeaters)
        {
            if (mark.IsMoved) pen.Line(mark.TruePlace, mark.Centre, Tone.Repeater, 1.5f);
            DrawNumber(mark.Number, mark.Centre, pen);
        }
    }

    /// <summary>A number on its hexagon.</summary>
    public static void DrawNumber(int number, Pixel centre, Pen pen)
    {
        Pixel[] hexagon = [.. Enumerable.Range(0, 6).Select(i => centre.Along(new(MathF.Sin(i * MathF.Tau / 6), MathF.Cos(i * MathF.Tau / 6)), 14))];
        pen.Outline(hexagon, isClosed: true, Tone.Paper, 3);
        pen.Area(hexagon, Tone.Repeater);
        pen.TextAbout(number.ToString(System.Globalization.CultureInfo.InvariantCulture), centre, TextStyle.Strong, Tone.Paper);
    }
}
