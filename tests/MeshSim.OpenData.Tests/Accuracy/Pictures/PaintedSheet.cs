using MeshSim.Drawing;
using MeshSim.Drawing.Inks;

namespace MeshSim.OpenData.Tests.Accuracy.Pictures;

/// <summary>A sheet of paper that becomes a PNG file.</summary>
internal static class PaintedSheet
{
    /// <summary>Draws and encodes. The same drawing gives the same bytes on one platform.</summary>
    /// <param name="title">What it is called.</param>
    /// <param name="width">Pixels across.</param>
    /// <param name="height">Pixels down.</param>
    /// <param name="draw">Draws on the paper.</param>
    public static byte[] Png(string title, int width, int height, Action<Pen> draw)
    {
        using var ink = new Ink();
        var painter = new SheetPainter(new(0, 0, width, height), title, [("paper", pen => pen.Flood(Tone.Paper)), ("figures", draw)], ink);
        return painter.File(PictureFormat.Png);
    }
}
