using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Tests.FloorPlans.Descriptions;

/// <summary>Short ways to describe storeys, in metres.</summary>
internal static class StoreySketch
{
    public static readonly ConstructionName Outer = new("outer"), Inner = new("inner"), Oak = new("oak"), Stone = new("stone");

    public static PlanPoint Point(double xMetres, double yMetres) => PlanPoint.FromMetres(xMetres, yMetres);

    public static RoomDescription Room(string name, double x1Metres, double y1Metres, double x2Metres, double y2Metres, int source = 0) =>
        new(new(source), new(name), Polygon.Rectangle(Point(x1Metres, y1Metres), Point(x2Metres, y2Metres)).Corners);

    public static RoomDescription Room(string name, params (double XMetres, double YMetres)[] corners) =>
        new(default, new(name), [.. corners.Select(corner => Point(corner.XMetres, corner.YMetres))]);

    public static StoreyDescription Storey(params RoomDescription[] rooms) => new()
    {
        Source = default,
        Name = new("ground"),
        ElevationMetres = 0,
        CeilingMetres = 2.4,
        Outer = Outer,
        Inner = Inner,
        Rooms = [.. rooms],
    };

    public static OpeningDescription Door(string name, WallPlace place, double offsetMetres, double widthMetres, int source = 0) => new()
    {
        Source = new(source),
        Name = name,
        Kind = OpeningKind.Door,
        Place = place,
        OffsetMetres = offsetMetres,
        WidthMetres = widthMetres,
        HeightMetres = 2,
        Construction = Oak,
    };

    public static WallPlace Between(string first, string second) => new WallPlace.Between(new(first), new(second));

    public static WallPlace SideOf(string room, CompassSide facing) => new WallPlace.SideOf(new(room), facing);

    /// <summary>Each wall as "name: start to end, construction".</summary>
    public static string[] Walls(StoreyBuilt built) =>
        [.. built.Storey.Walls.Select(wall => FormattableString.Invariant($"{wall.Name}: {wall.Start} to {wall.End}, {wall.Construction}"))];

    /// <summary>Builds what must have no problems.</summary>
    public static Storey Sound(StoreyDescription description)
    {
        StoreyBuilt built = StoreyBuilder.Build(description);
        built.Problems.Should().BeEmpty();
        return built.Storey;
    }
}
