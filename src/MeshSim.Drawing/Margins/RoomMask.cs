using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing.Margins;

/// <summary>Which pixels of a row lie inside the building.</summary>
internal static class RoomMask
{
    /// <summary>Marks the pixels whose middle lies in a room; all of them when the storey has no rooms.</summary>
    /// <param name="outlines">Outlines of the rooms on the sheet.</param>
    /// <param name="left">x of the left side of the first pixel.</param>
    /// <param name="y">y of the middle of the row.</param>
    /// <param name="inside">One entry per pixel, overwritten.</param>
    public static void Mark(IReadOnlyList<Pixel[]> outlines, int left, float y, Span<bool> inside)
    {
        inside.Fill(outlines.Count == 0);
        foreach (Pixel[] outline in outlines)
        {
            List<float> crossings = CrossingsOf(outline, y);
            for (int i = 0; i + 1 < crossings.Count; i += 2)
            {
                int from = Math.Max(0, (int)MathF.Ceiling(crossings[i] - 0.5f) - left);
                int to = Math.Min(inside.Length, (int)MathF.Ceiling(crossings[i + 1] - 0.5f) - left);
                if (to > from) inside[from..to].Fill(true);
            }
        }
    }

    /// <summary>The outlines of a storey's rooms on the sheet.</summary>
    public static Pixel[][] OutlinesOf(Storey storey, Projection projection) =>
        [.. storey.Rooms.Select(room => projection.ToPixels(room.Outline))];

    private static List<float> CrossingsOf(Pixel[] outline, float y)
    {
        List<float> crossings = [];
        for (int i = 0; i < outline.Length; i++)
        {
            Pixel a = outline[i], b = outline[(i + 1) % outline.Length];
            if ((a.Y <= y) != (b.Y <= y)) crossings.Add(a.X + ((b.X - a.X) * (y - a.Y) / (b.Y - a.Y)));
        }

        crossings.Sort();
        return crossings;
    }
}
