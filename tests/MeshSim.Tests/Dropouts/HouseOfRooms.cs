using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Tests.Placement;

namespace MeshSim.Tests.Dropouts;

/// <summary>Small random homes with rooms, two networks of different bands and random states.</summary>
internal static class HouseOfRooms
{
    public static readonly RoomName Left = new("left"), Right = new("right");

    public static Home Of(int seed)
    {
        var random = new Random(seed);
        Home home = RandomHomes.Of(seed);
        Storey storey = home.FloorPlan.Storeys[0];
        int width = storey.Walls.Max(wall => Math.Max(wall.Start.X, wall.End.X)), depth = storey.Walls.Max(wall => Math.Max(wall.Start.Y, wall.End.Y));
        Room[] rooms =
        [
            new(Left, Polygon.Rectangle(new(0, 0), new(width / 2, depth))),
            new(Right, Polygon.Rectangle(new(width / 2, 0), new(width, depth))),
        ];
        Network low = home.Networks[0] with { Name = new("low"), Radio = home.Networks[0].Radio with { FirstCarrier = new(868), ChannelStepMegahertz = 0.01 } };
        return home with
        {
            FloorPlan = new([storey with { Rooms = [.. rooms] }]),
            Networks = [home.Networks[0], low with { Coordinator = random.Next(2) == 0 ? low.Coordinator : new("nobody") }],
            Devices = [.. home.Devices.Select(device => device with { SwitchedBy = random.Next(4) == 0 ? "switch" : null, Circuit = random.Next(3) == 0 ? "circuit" : null })],
            States = [.. Enumerable.Range(0, random.Next(3)).Select(i => StateOf(random, i, home.Devices))],
        };
    }

    private static State StateOf(Random random, int number, ImmutableArray<Device> devices) => new()
    {
        Name = FormattableString.Invariant($"state {number}"),
        DevicesOff = [.. devices.Where(_ => random.Next(3) == 0).Select(device => device.Id)],
        SwitchesOff = random.Next(2) == 0 ? [] : ["switch"],
        CircuitsOff = random.Next(3) == 0 ? ["circuit"] : [],
    };
}
