using MeshSim.Drawing.Margins;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Walls;

namespace MeshSim.Drawing.Labels;

/// <summary>
/// Where the label of a contour line can stand: on its own line, in a room, clear of walls and of the lines of other levels. Where
/// lines crowd, as along a wall, no label could say which of them it means.
/// </summary>
internal sealed class ContourPlaces
{
    /// <summary>A shorter line goes without a label, pixels.</summary>
    private const float ShortestPixels = 220;

    /// <summary>Distance between tried places, pixels.</summary>
    private const float StepPixels = 8;

    private readonly MapContents map;
    private readonly WallRun[] walls;
    private readonly (double LevelDb, Pixel[] Line)[] lines;

    /// <summary>Gathers what is in the way.</summary>
    public ContourPlaces(MapContents map)
    {
        this.map = map;
        walls = [.. map.Storey.Walls.Select(wall => WallRun.Of(wall, map.Coverage.Home, map.Layout.Projection))];
        lines = [.. map.Contours.Select(contour => (contour.LevelDb, PixelsOf(contour)))];
    }

    /// <summary>The places along a line, those near its middle the cheapest.</summary>
    public IEnumerable<LabelPlace> On(Contour contour, float width, float height)
    {
        List<Pixel> points = Thinned(PixelsOf(contour));
        return points.Count * StepPixels < ShortestPixels
            ? []
            : LabelPlaces.Along(points, width, height).Where(place => IsInRoom(place.Box) && IsClear(place.Box, contour.LevelDb));
    }

    private bool IsInRoom(PixelBox box) =>
        map.Storey.Rooms.IsEmpty || map.Storey.RoomAt(map.Layout.Projection.ToPlan(box.Centre)) is not null;

    private bool IsClear(PixelBox box, double levelDb)
    {
        foreach (WallRun wall in walls)
            if (box.Grown(wall.ThicknessPixels / 2).IsMetBy(wall.Start, wall.At(wall.LengthPixels, 0))) return false;
        foreach ((double otherDb, Pixel[] line) in lines)
        {
            if (otherDb == levelDb) continue;
            for (int i = 0; i + 1 < line.Length; i++)
                if (box.IsMetBy(line[i], line[i + 1])) return false;
        }

        return true;
    }

    private Pixel[] PixelsOf(Contour contour) => [.. contour.Points.Select(map.Layout.Projection.ToPixel)];

    private static List<Pixel> Thinned(Pixel[] line)
    {
        List<Pixel> points = [line[0]];
        foreach (Pixel point in line)
            if (points[^1].DistanceTo(point) >= StepPixels) points.Add(point);
        return points;
    }
}
