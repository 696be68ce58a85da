using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;
using MeshSim.Studies;

namespace MeshSim.Drawing.Tests.Scenes;

/// <summary>
/// Routes, repeaters and margins of <see cref="TwoStoreyFlat"/> that look like radio but are not computed by the library, so
/// that pictures can be tested alone: 20 dB per decade and a flat price for each wall between.
/// </summary>
internal static class SyntheticCoverage
{
    private const double WallDb = 11, MarginAtOneMetreDb = 46, FloorDb = 14;

    public static Decibels DesignMargin { get; } = new(6.4);

    public static NetworkCoverage Coverage { get; } = new()
    {
        Home = TwoStoreyFlat.Home,
        Network = TwoStoreyFlat.Network,
        Model = ModelName.LogDistance,
        DesignMargin = DesignMargin,
        Links = [],
        Devices =
        [
            Reached("hall-lamp", "stick"), Reached("hall-switch", "hall-lamp", "stick"), Reached("front-door", "stick"), Reached("tv-plug", "stick"),
            Reached("lounge-lamp", "tv-plug", "stick"), Reached("lounge-motion", "stick"), Reached("lounge-valve", "tv-plug", "stick"),
            Reached("kettle-plug", "lounge-lamp", "tv-plug", "stick"), Reached("kitchen-smoke", "kettle-plug", "lounge-lamp", "tv-plug", "stick"),
            Lost("sink-leak", null), Reached("washer-plug", "meter", "hall-lamp", "stick"), Lost("freezer-temp", "washer-plug"), Reached("meter", "hall-lamp", "stick"),
            Reached("bed-lamp", "tv-plug", "stick"), Reached("bed-blind", "bed-lamp", "tv-plug", "stick"), Reached("bed-window", "bed-blind", "bed-lamp", "tv-plug", "stick"),
            Reached("landing-module", "hall-lamp", "stick"), Lost("study-thermo", "landing-module"), Lost("study-remote", "landing-module"),
        ],
    };

    public static RepeaterPlacement Repeaters { get; } = new()
    {
        Network = TwoStoreyFlat.Network.Name,
        OutletsConsidered = 2,
        LowerBound = 2,
        Unserved = [],
        Repeaters = [.. TwoStoreyFlat.Home.Outlets.Select(outlet => new PlacedRepeater { Outlet = outlet, Serves = [], UplinkMargin = new(12), DownlinkMargin = new(9) })],
    };

    public static MarginMap Map(StoreyName storey, double stepMetres = 0.1)
    {
        FieldGrid grid = FieldGrid.Over(TwoStoreyFlat.Home.FloorPlan, storey, stepMetres, 1);
        DeviceId[] relays = [.. TwoStoreyFlat.Home.Devices.Where(device => device.Role != Role.EndDevice).Select(device => device.Id)];
        Device[] reached = [.. TwoStoreyFlat.Home.Devices.Where(device => relays.Contains(device.Id) && device.Id.Value is "stick" or "tv-plug" or "bed-lamp" or "hall-lamp")];
        float[] values = new float[grid.Count];
        for (int row = 0; row < grid.Rows; row++)
            for (int column = 0; column < grid.Columns; column++)
                values[(row * grid.Columns) + column] = (float)reached.Max(device => MarginDb(device, storey, grid.At(column, row).Plan));
        return new() { Network = TwoStoreyFlat.Network.Name, Storey = storey, Margin = new(grid, values), DesignMargin = DesignMargin, Rooms = Shares(storey, new(grid, values)) };
    }

    private static double MarginDb(Device device, StoreyName storey, PlanPoint at)
    {
        double metres = Math.Max(0.3, device.Point.DistanceMetresTo(at)) + (device.Storey == storey ? 0 : 2);
        int walls = TwoStoreyFlat.Home.FloorPlan.Storey(storey).Walls.Count(wall => DoCross(wall, device.Point, at));
        return MarginAtOneMetreDb - (25 * Math.Log10(metres)) - (WallDb * walls) - (device.Storey == storey ? 0 : FloorDb);
    }

    private static bool DoCross(Wall wall, PlanPoint from, PlanPoint to) =>
        Math.Sign(Predicates.SignedArea(wall.Start, wall.End, from)) * Math.Sign(Predicates.SignedArea(wall.Start, wall.End, to)) < 0
        && Math.Sign(Predicates.SignedArea(from, to, wall.Start)) * Math.Sign(Predicates.SignedArea(from, to, wall.End)) <= 0;

    private static ImmutableArray<(RoomName Room, double DarkShare)> Shares(StoreyName storey, Field field)
    {
        Storey on = TwoStoreyFlat.Home.FloorPlan.Storey(storey);
        var points = Enumerable.Range(0, field.Grid.Count)
            .Select(i => (Room: on.RoomAt(field.Grid.At(i % field.Grid.Columns, i / field.Grid.Columns).Plan), Margin: field.Values[i])).ToList();
        return [.. on.Rooms.Select(room => (room.Name, points.Where(point => point.Room == room).Average(point => point.Margin < DesignMargin.Value ? 1.0 : 0)))];
    }

    private static DeviceReach Reached(params string[] path) => new()
    {
        Device = new(path[0]),
        Route = new() { Path = [.. path.Select(id => new DeviceId(id))], Etx = path.Length, WeakestMargin = new(9), Delivery = 0.98 },
        DisjointRoutes = 1,
    };

    private static DeviceReach Lost(string device, string? nearest) => new()
    {
        Device = new(device),
        Route = null,
        DisjointRoutes = 0,
        NearestLink = nearest is null ? null : new()
        {
            From = new(device),
            To = new(nearest),
            PathLoss = new("synthetic", 5, []),
            Received = new(-96),
            Reverse = new(-95),
            Margin = new(2.2),
            Delivery = 0.6,
            ReverseDelivery = 0.6,
        },
    };
}
