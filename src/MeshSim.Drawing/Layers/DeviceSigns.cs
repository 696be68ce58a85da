using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using SkiaSharp;

namespace MeshSim.Drawing.Layers;

/// <summary>The parts of a device's sign, for the map and for the legend.</summary>
internal static class DeviceSigns
{
    private const float BadgeRadius = 7.5f;

    /// <summary>A symbol on its light disc.</summary>
    public static void DrawSymbol(SymbolShape shape, Pixel centre, SKColor colour, Pen pen)
    {
        pen.Disc(centre, Mark.Radius, Tone.Paper);
        pen.Ring(centre, Mark.Radius, colour, 1.3f);
        foreach (SymbolStroke stroke in SymbolStrokes.Of(shape))
        {
            Pixel[] points = [.. stroke.Points.Select(p => new Pixel(centre.X + (p.X * (Mark.Radius - 1)), centre.Y + (p.Y * (Mark.Radius - 1))))];
            if (stroke.IsFilled) pen.Area(points, colour);
            pen.Outline(points, stroke.IsClosed, colour, 1.6f);
        }
    }

    /// <summary>The letter of a role: a coordinator's on a dark square, a router's on a dark disc, an end device's on a light one.</summary>
    public static void DrawRole(Role role, Pixel centre, SKColor colour, Pen pen)
    {
        bool isDark = role != Role.EndDevice;
        if (role == Role.Coordinator) pen.Plate(PixelBox.About(centre, 2 * BadgeRadius, 2 * BadgeRadius), colour, radius: 2);
        else pen.Disc(centre, BadgeRadius, isDark ? colour : Tone.Paper);
        if (role == Role.EndDevice) pen.Ring(centre, BadgeRadius, colour, 1.2f);
        pen.TextAbout(LetterOf(role), centre, TextStyle.Letter, isDark ? Tone.Paper : colour);
    }

    /// <summary>A triangle with an exclamation mark.</summary>
    public static void DrawWarning(Pixel centre, Pen pen)
    {
        Pixel[] triangle = [new(centre.X, centre.Y - 9), new(centre.X + 9, centre.Y + 7), new(centre.X - 9, centre.Y + 7)];
        pen.Outline(triangle, isClosed: true, Tone.Paper, 3);
        pen.Area(triangle, Tone.Unreached);
        pen.Line(new(centre.X, centre.Y - 3), new(centre.X, centre.Y + 1.5f), Tone.Paper, 2);
        pen.Disc(new(centre.X, centre.Y + 4.6f), 1.3f, Tone.Paper);
    }

    private static string LetterOf(Role role) => role switch
    {
        Role.Coordinator => "C",
        Role.Router => "R",
        _ => "E",
    };
}
