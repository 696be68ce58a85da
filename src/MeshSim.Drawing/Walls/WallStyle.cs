using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans;
using MeshSim.Materials;

namespace MeshSim.Drawing.Walls;

/// <summary>How a wall is drawn. The styles differ in their strokes, never in colour alone.</summary>
internal enum WallStyle
{
    /// <summary>Brick, block, concrete, stone: solid.</summary>
    Masonry,

    /// <summary>Boards on studs: hollow.</summary>
    Boarded,

    /// <summary>Timber: hollow with cross strokes.</summary>
    Timber,

    /// <summary>Glass: hollow with a line along its middle.</summary>
    Glass,

    /// <summary>Sheet metal or foil: solid with a light line along its middle.</summary>
    Metal,

    /// <summary>Its loss is stated without saying what it is made of: solid with light cross strokes.</summary>
    Stated,
}

/// <summary>Finds and draws the style of a wall.</summary>
internal static class WallStyles
{
    /// <summary>Between two cross strokes, pixels.</summary>
    private const float StrokeStep = 9;

    // The first row of which a layer's material has a word decides: what blocks radio most is what a reader should see.
    private static readonly (WallStyle Style, string[] Words)[] ByWord =
    [
        (WallStyle.Metal, ["metal"]),
        (WallStyle.Masonry, ["brick", "concrete", "stone", "block", "mortar", "marble", "clay"]),
        (WallStyle.Boarded, ["plaster", "board", "stud"]),
        (WallStyle.Timber, ["wood"]),
        (WallStyle.Glass, ["glass", "acrylic"]),
    ];

    /// <summary>The style of a construction.</summary>
    public static WallStyle Of(ConstructionName name, Home home)
    {
        if (!home.Constructions.TryGetValue(name, out Construction? construction)) return WallStyle.Masonry;
        if (construction.Layers.IsEmpty) return WallStyle.Stated;
        bool HasAny(string[] words) => construction.Layers.Any(layer => words.Any(word => layer.Material.Name.Contains(word, StringComparison.Ordinal)));
        return ByWord.Where(row => HasAny(row.Words)).Select(row => row.Style).FirstOrDefault(WallStyle.Boarded);
    }

    /// <summary>Whether it is filled.</summary>
    public static bool IsSolid(WallStyle style) => style is WallStyle.Masonry or WallStyle.Metal or WallStyle.Stated;

    /// <summary>Draws a stretch of a wall.</summary>
    /// <param name="style">How.</param>
    /// <param name="run">The wall.</param>
    /// <param name="from">Pixels from its start.</param>
    /// <param name="to">Pixels from its start.</param>
    /// <param name="pen">Where.</param>
    public static void Draw(WallStyle style, WallRun run, float from, float to, Pen pen)
    {
        bool isSolid = IsSolid(style);
        Pixel[] corners = run.Stretch(from, to);
        pen.Area(corners, isSolid ? Tone.Wall : Tone.Paper);
        if (!isSolid) pen.Outline(corners, isClosed: true, Tone.Wall, Math.Min(1.3f, run.ThicknessPixels / 3));
        switch (style)
        {
            case WallStyle.Metal:
                pen.Line(run.At(from, 0), run.At(to, 0), Tone.Paper, Math.Max(1, run.ThicknessPixels / 4));
                break;
            case WallStyle.Glass:
                pen.Line(run.At(from, 0), run.At(to, 0), Tone.Wall, 1);
                break;
            case WallStyle.Timber or WallStyle.Stated:
                DrawStrokes(run, from, to, isSolid ? Tone.Paper : Tone.Wall, pen);
                break;
        }
    }

    private static void DrawStrokes(WallRun run, float from, float to, SkiaSharp.SKColor colour, Pen pen)
    {
        float half = run.ThicknessPixels / 2;
        for (float at = from + half; at < to - half; at += StrokeStep)
            pen.Line(run.At(at - (half / 2), -half), run.At(at + (half / 2), half), colour, 1);
    }
}
