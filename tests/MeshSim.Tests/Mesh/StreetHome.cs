using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Radio;
using MeshSim.Tests.Radio;

namespace MeshSim.Tests.Mesh;

/// <summary>
/// Devices in the open, so far apart that a map in metres shows who hears whom: links are usable up to 263 m.
/// East: hub - bulb - east-sensor, the bulb behind a switch. West: two lamps behind one switch, either of which carries west-sensor.
/// North: contact, by the bulb or by plug. South: far-sensor out of reach; modules of another network at three places.
/// </summary>
internal static class StreetHome
{
    public static Network Network { get; } = MeshSamples.Network(hopLimit: 5) with { Coordinator = new("hub") };

    public static Network Star { get; } =
        Network with { Name = new("star"), Coordinator = new("star-hub"), HopLimit = 1, Radio = RadioSamples.OQpsk with { Topology = Topology.Star } };

    public static Home Home { get; } = new()
    {
        Name = "Street",
        Region = "EU",
        FloorPlan = new([new() { Name = new("ground"), ElevationMetres = 0, CeilingMetres = 3 }]),
        Constructions = ImmutableDictionary<ConstructionName, Construction>.Empty,
        Networks = [Network, Star],
        Devices =
        [
            Device("hub", Role.Coordinator, 0, 0) with { Power = PowerSource.Usb, Circuit = "hub" },
            Device("bulb", Role.Router, 200, 0) with { Circuit = "lights", SwitchedBy = "wall switch" },
            Device("east-sensor", Role.EndDevice, 400, 0),
            Device("plug", Role.Router, 0, 200) with { Circuit = "sockets" },
            Device("contact", Role.EndDevice, 200, 200),
            Device("lamp-1", Role.Router, -200, 20) with { Circuit = "lights", SwitchedBy = "lamp switch" },
            Device("lamp-2", Role.Router, -200, -20) with { Circuit = "lights", SwitchedBy = "lamp switch" },
            Device("west-sensor", Role.EndDevice, -400, 0),
            Device("heater", Role.EndDevice, 210, -70) with { Power = PowerSource.Mains, Circuit = "sockets" },
            Device("far-sensor", Role.EndDevice, 0, -450),
            Module("star-hub", 1, 1) with { Role = Role.Coordinator, Power = PowerSource.Usb },
            Module("shed-module", 0, -230),
            Module("lost-module", 900, 0),
            Module("button", 10, 10) with { Power = PowerSource.Battery },
        ],
        States =
        [
            new() { Name = "evening", SwitchesOff = ["wall switch"], MustHold = true },
            new() { Name = "holiday", CircuitsOff = ["sockets"], DevicesOff = [new("bulb"), new("east-sensor")] },
        ],
    };

    public static StateGraphs Graphs { get; } = new(Home, Network, ModelName.LogDistance);

    public static DeviceId[] Ids(params string[] ids) => [.. ids.Select(id => new DeviceId(id))];

    private static Device Module(string id, double xMetres, double yMetres) => Device(id, Role.Router, xMetres, yMetres) with { Network = new("star") };

    private static Device Device(string id, Role role, double xMetres, double yMetres) =>
        MeshSamples.Device(0, role) with { Id = new(id), Point = PlanPoint.FromMetres(xMetres, yMetres) };
}
