using CsCheck;
using MeshSim.FloorPlans.Descriptions;
using MeshSim.FloorPlans.Geometry;
using NetTopologySuite.Geometries;
using Polygon = MeshSim.FloorPlans.Geometry.Polygon;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace MeshSim.Tests.FloorPlans.Descriptions;

/// <summary>Random floor plans: a rectangle cut again and again from side to side, then some neighbours merged into L, T and U shapes.</summary>
internal static class RandomPartitions
{
    private const int HalfMetre = Lattice.StepsPerMetre / 2, LeastSide = 3, WholeSide = 24, Cuts = 12, Merges = 3;

    private static readonly GeometryFactory Factory = new();

    private static readonly Gen<int> Choice = Gen.Int[0, int.MaxValue - 1];

    /// <summary>Up to 13 rooms without holes, all corners on a half-metre grid.</summary>
    public static readonly Gen<StoreyDescription> Any =
        Gen.Select(Choice.Array[Cuts], Choice.Array[Merges], (cuts, merges) => Describe(Merged(Cut(cuts), merges)));

    public static Polygon ShapeOf(Shape geometry)
    {
        Coordinate[] ring = ((NetTopologySuite.Geometries.Polygon)geometry).ExteriorRing.Coordinates;
        PlanPoint[] corners = [.. ring.Take(ring.Length - 1).Select(c => new PlanPoint((int)c.X, (int)c.Y))];
        int count = corners.Length;

        // A union keeps corners where its parts met, though the edge runs straight on.
        bool bends(PlanPoint corner, int i) => Predicates.SideOf(corners[(i + count - 1) % count], corner, corners[(i + 1) % count]) != Side.On;
        return new([.. corners.Where(bends)]);
    }

    public static Shape GeometryOf(Polygon polygon) =>
        Factory.CreatePolygon([.. polygon.Corners.Append(polygon.Corners[0]).Select(p => new Coordinate(p.X, p.Y))]);

    private static List<Shape> Cut(int[] choices)
    {
        var boxes = new List<(int X1, int Y1, int X2, int Y2)> { (0, 0, WholeSide, WholeSide) };
        foreach (int choice in choices)
        {
            int index = choice % boxes.Count;
            (int x1, int y1, int x2, int y2) = boxes[index];
            bool isUpright = choice / 16 % 2 == 0;
            int room = (isUpright ? x2 - x1 : y2 - y1) - (2 * LeastSide);
            if (room < 0) continue;
            int at = LeastSide + (choice / 32 % (room + 1));
            boxes[index] = isUpright ? (x1, y1, x1 + at, y2) : (x1, y1, x2, y1 + at);
            boxes.Add(isUpright ? (x1 + at, y1, x2, y2) : (x1, y1 + at, x2, y2));
        }

        return [.. boxes.Select(box => GeometryOf(Polygon.Rectangle(OnGrid(box.X1, box.Y1), OnGrid(box.X2, box.Y2))))];
    }

    private static PlanPoint OnGrid(int x, int y) => new(x * HalfMetre, y * HalfMetre);

    private static List<Shape> Merged(List<Shape> rooms, int[] choices)
    {
        foreach (int choice in choices)
        {
            Shape first = rooms[choice % rooms.Count];
            Shape? second = rooms.Find(other => other != first && other.Intersection(first).Length > 0);
            if (second?.Union(first) is not NetTopologySuite.Geometries.Polygon { NumInteriorRings: 0 } both) continue;
            rooms.Remove(second);
            rooms[rooms.IndexOf(first)] = both;
        }

        return rooms;
    }

    private static StoreyDescription Describe(List<Shape> rooms) => StoreySketch.Storey(
        [.. rooms.Select((room, i) => new RoomDescription(new(i), new(FormattableString.Invariant($"r{i}")), ShapeOf(room).Corners))]);
}
