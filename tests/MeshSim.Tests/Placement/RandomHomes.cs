using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Quantities;
using MeshSim.Tests.Mesh;
using static MeshSim.Tests.Propagation.PlanSketch;

namespace MeshSim.Tests.Placement;

/// <summary>Small random homes: two to four rooms behind walls of stated losses, up to seven devices, up to seven outlets.</summary>
internal static class RandomHomes
{
    private const int Rooms = 4;

    public static Home Of(int seed)
    {
        var random = new Random(seed);
        double widthMetres = 10 + (25 * random.NextDouble()), depthMetres = 5 + (5 * random.NextDouble());
        Wall[] walls = [.. InnerWalls(random, widthMetres, depthMetres).Prepend(Wall("outer", Point(0, 0), Point(widthMetres, 0)))];
        Network network = MeshSamples.Network(hopLimit: random.Next(1, 8));
        Home home = new()
        {
            Name = "random",
            Region = "EU",
            FloorPlan = Plan(walls),
            Constructions = walls.Select(wall => wall.Construction)
                .ToImmutableDictionary(name => name, name => Blocking(name, 15 + (20 * random.NextDouble()))),
            Networks = [network with { Radio = network.Radio with { TransmitPower = new(-15 * random.NextDouble()) } }],
        };
        int devices = random.Next(3, 8), outlets = random.Next(2, 8);
        return home with
        {
            Devices = [.. Enumerable.Range(0, devices).Select(i => Anywhere(MeshSamples.Device(i, RoleOf(i))))],
            Outlets = [.. Enumerable.Range(0, outlets).Select(OutletAt)],
        };

        Role RoleOf(int i) => i == 0 ? Role.Coordinator : random.Next(6) == 0 ? Role.Router : Role.EndDevice;

        PlanPoint Somewhere() => Point(widthMetres * random.NextDouble(), depthMetres * random.NextDouble());

        Device Anywhere(Device device) => device with
        {
            Point = Somewhere(),
            TransmitPower = random.Next(3) == 0 ? new PowerLevel(-12) : null,
            Mounting = MeshSamples.Surface with { Losses = [(new(2440), new(random.Next(3) == 0 ? 8 : 0))] },
        };

        Outlet OutletAt(int i) => new()
        {
            Id = new(FormattableString.Invariant($"o{i}")),
            Storey = new("ground"),
            Point = Somewhere(),
            HeightMetres = 0.3,
        };
    }

    /// <summary>One to three walls across, some with an open door: two to four rooms in a row or around a crossing.</summary>
    private static IEnumerable<Wall> InnerWalls(Random random, double widthMetres, double depthMetres)
    {
        int rooms = random.Next(2, Rooms + 1);
        bool isCrossing = rooms == Rooms && random.Next(2) == 0;
        if (isCrossing) yield return Inner("middle", Point(0, depthMetres / 2), Point(widthMetres, depthMetres / 2));
        int across = isCrossing ? 1 : rooms - 1;
        for (int i = 1; i <= across; i++)
        {
            double xMetres = widthMetres * i / (across + 1);
            yield return Inner(FormattableString.Invariant($"across {i}"), Point(xMetres, 0), Point(xMetres, depthMetres));
        }

        Wall Inner(string name, PlanPoint start, PlanPoint end)
        {
            Opening[] openings = random.Next(2) == 0 ? [] : [Door(name + " door", 1, 0.8) with { IsOpen = true }];
            return Wall(name, start, end, openings) with { Construction = new(name) };
        }
    }

    private static Construction Blocking(ConstructionName name, double lossDb) => new()
    {
        Name = name,
        Description = "",
        Use = ConstructionUse.Wall,
        Stated = [new(new(2440), new(lossDb))],
        Spread = Decibels.Zero,
        Source = "assumed",
    };
}
