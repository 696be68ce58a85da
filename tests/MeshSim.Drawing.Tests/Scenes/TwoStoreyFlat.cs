using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Drawing.Tests.Scenes;

/// <summary>A small invented flat on two storeys, written with the contract types alone.</summary>
internal static class TwoStoreyFlat
{
    public static readonly StoreyName Ground = new("ground"), Upper = new("upper");

    private static readonly Mounting Surface = new() { Name = "surface", Description = "on the surface", Losses = [], Source = "assumed" };

    public static Network Network { get; } = new()
    {
        Name = new("plugs"),
        Channel = 20,
        Coordinator = new("stick"),
        HopLimit = 5,
        Radio = new()
        {
            Name = "ieee802154-2450",
            Description = "2.4 GHz mesh",
            Standard = "IEEE 802.15.4",
            FirstCarrier = new(2405),
            FirstChannel = 11,
            LastChannel = 26,
            ChannelStepMegahertz = 5,
            Topology = Topology.Mesh,
            Modulation = Modulation.OQpsk,
            BitRateKilobitsPerSecond = 250,
            NoiseBandwidthKilohertz = 2000,
            Sensitivity = new(-97),
            SensitivityFrameOctets = 20,
            NoiseFigure = new(8),
            TransmitPower = new(5),
            AntennaGain = Decibels.Zero,
            HopLimit = 5,
            FrameOctets = 60,
            OverheadOctets = 6,
            Source = "assumed",
        },
    };

    public static Home Home { get; } = new()
    {
        Name = "Two-storey flat",
        Region = "EU",
        FloorPlan = new([GroundStorey(), UpperStorey()]),
        Constructions = Constructions(),
        Networks = [Network],
        Devices = Devices(),
        Outlets =
        [
            new() { Id = new("landing-outlet"), Storey = Upper, Point = At(2.4, 5.6), HeightMetres = 0.3, Room = new("landing") },
            new() { Id = new("kitchen-outlet"), Storey = Ground, Point = At(8.8, 1.2), HeightMetres = 1.1, Room = new("kitchen") },
        ],
        Parameters = new() { NorthDegrees = 25 },
    };

    public static PlanPoint At(double x, double y) => PlanPoint.FromMetres(x, y);

    private static Storey GroundStorey() => new()
    {
        Name = Ground,
        ElevationMetres = 0,
        CeilingMetres = 2.45,
        Rooms = [Room("living room", 0, 0, 5.2, 4.4), Room("kitchen", 5.2, 0, 9, 3.6), Room("hall", 0, 4.4, 5.2, 6.4), Room("utility", 5.2, 3.6, 9, 6.4)],
        Walls =
        [
            Outer("living room, south", At(0, 0), At(5.2, 0), "living room", Window("garden window", 1.2, 2.2)),
            Outer("kitchen, south", At(5.2, 0), At(9, 0), "kitchen", Window("sink window", 1.1, 1.3)),
            Outer("kitchen, east", At(9, 0), At(9, 3.6), "kitchen", Door("back door", 1.9, 0.9)),
            Outer("utility, east", At(9, 3.6), At(9, 6.4), "utility"),
            Outer("utility, north", At(9, 6.4), At(5.2, 6.4), "utility", Window("utility window", 1.4, 0.8)),
            Outer("hall, north", At(5.2, 6.4), At(0, 6.4), "hall", Door("front door", 3.4, 0.95)),
            Outer("hall, west", At(0, 6.4), At(0, 4.4), "hall"),
            Outer("living room, west", At(0, 4.4), At(0, 0), "living room", Window("side window", 1.5, 1.4)),
            Inner("living room | kitchen", At(5.2, 0), At(5.2, 3.6), "brick-half"),
            Inner("living room | utility", At(5.2, 3.6), At(5.2, 4.4), "brick-half"),
            Inner("hall | utility", At(5.2, 4.4), At(5.2, 6.4), "brick-half", Door("utility door", 0.6, 0.76)),
            Inner("living room | hall", At(0, 4.4), At(5.2, 4.4), "stud", Door("living room door", 3.7, 0.76)),
            Inner("kitchen | utility", At(5.2, 3.6), At(9, 3.6), "stud", Door("kitchen door", 0.5, 0.76)),
        ],
        Objects =
        [
            new() { Name = "fridge", Footprint = Polygon.Rectangle(At(8.2, 2.85), At(8.85, 3.5)), HeightMetres = 1.8, Construction = new("metal") },
            new() { Name = "boiler", Footprint = Polygon.Rectangle(At(8.1, 5.6), At(8.85, 6.25)), HeightMetres = 1.6, Construction = new("metal") },
        ],
    };

    private static Storey UpperStorey() => new()
    {
        Name = Upper,
        ElevationMetres = 2.73,
        CeilingMetres = 2.4,
        Floor = new(new("joists"), 0.28, [new(Polygon.Rectangle(At(0.2, 4.6), At(2.9, 5.5)))]),
        Rooms = [Room("bedroom", 0, 0, 5.2, 4.4), Room("landing", 0, 4.4, 5.2, 6.4), Room("study", 5.2, 0, 9, 6.4)],
        Walls =
        [
            Outer("bedroom, south", At(0, 0), At(5.2, 0), "bedroom", Window("bedroom window", 1.5, 1.8)),
            Outer("study, south", At(5.2, 0), At(9, 0), "study", Window("study window", 1, 1.5)),
            Outer("study, east", At(9, 0), At(9, 6.4), "study"),
            Outer("study, north", At(9, 6.4), At(5.2, 6.4), "study"),
            Outer("landing, north", At(5.2, 6.4), At(0, 6.4), "landing", Window("landing window", 2, 1)),
            Outer("landing, west", At(0, 6.4), At(0, 4.4), "landing"),
            Outer("bedroom, west", At(0, 4.4), At(0, 0), "bedroom"),
            Inner("bedroom | study", At(5.2, 0), At(5.2, 4.4), "brick-half"),
            Inner("landing | study", At(5.2, 4.4), At(5.2, 6.4), "brick-half", Door("study door", 0.5, 0.76)),
            Inner("bedroom | landing", At(0, 4.4), At(5.2, 4.4), "stud", Door("bedroom door", 3.7, 0.76)),
        ],
    };

    private static ImmutableArray<Device> Devices() =>
    [
        Device("stick", "usb stick", PowerSource.Usb, Role.Coordinator, Ground, 0.6, 4.9, "hall"),
        Device("hall-lamp", "ceiling lamp", PowerSource.Mains, Role.Router, Ground, 2.6, 5.4, "hall"),
        Device("hall-switch", "wall switch", PowerSource.Battery, Role.EndDevice, Ground, 4.9, 4.55, "hall"),
        Device("front-door", "door contact", PowerSource.Battery, Role.EndDevice, Ground, 1.3, 6.25, "hall"),
        Device("tv-plug", "smart plug", PowerSource.Mains, Role.Router, Ground, 0.25, 1.2, "living room"),
        Device("lounge-lamp", "floor lamp", PowerSource.Mains, Role.Router, Ground, 4.8, 0.5, "living room"),
        Device("lounge-motion", "motion sensor", PowerSource.Battery, Role.EndDevice, Ground, 4.95, 4.15, "living room"),
        Device("lounge-valve", "radiator valve", PowerSource.Battery, Role.EndDevice, Ground, 2.3, 0.2, "living room"),
        Device("kettle-plug", "smart plug", PowerSource.Mains, Role.Router, Ground, 6.2, 0.25, "kitchen"),
        Device("kitchen-smoke", "smoke alarm", PowerSource.Battery, Role.EndDevice, Ground, 7.1, 1.8, "kitchen"),
        Device("sink-leak", "leak sensor", PowerSource.Battery, Role.EndDevice, Ground, 7.0, 0.25, "kitchen"),
        Device("washer-plug", "smart plug", PowerSource.Mains, Role.Router, Ground, 6.0, 6.2, "utility"),
        Device("freezer-temp", "temperature sensor", PowerSource.Battery, Role.EndDevice, Ground, 8.5, 3.9, "utility"),
        Device("meter", "energy meter", PowerSource.Mains, Role.Router, Ground, 5.35, 5.9, "utility"),
        Device("bed-lamp", "bedside lamp", PowerSource.Mains, Role.Router, Upper, 0.4, 2.2, "bedroom"),
        Device("bed-blind", "blind motor", PowerSource.Mains, Role.Router, Upper, 2.4, 0.25, "bedroom"),
        Device("bed-window", "window contact", PowerSource.Battery, Role.EndDevice, Upper, 2.4, 0.12, "bedroom"),
        Device("landing-module", "module behind switch", PowerSource.Mains, Role.Router, Upper, 4.9, 6.2, "landing"),
        Device("study-thermo", "thermostat", PowerSource.Battery, Role.EndDevice, Upper, 8.8, 1.0, "study"),
        Device("study-remote", "remote", PowerSource.Battery, Role.EndDevice, Upper, 8.2, 0.9, "study"),
    ];

    private static Device Device(string id, string kind, PowerSource power, Role role, StoreyName storey, double x, double y, string room) => new()
    {
        Id = new(id),
        Name = id,
        Network = new("plugs"),
        Kind = kind,
        Power = power,
        Role = role,
        Storey = storey,
        Point = At(x, y),
        HeightMetres = 1,
        Room = new(room),
        Mounting = Surface,
    };

    private static ImmutableDictionary<ConstructionName, Construction> Constructions() =>
        new[] { Layered("cavity-brick", 0.27), Layered("brick-half", 0.13), Layered("stud", 0.10), Layered("joists", 0.28) }
            .ToImmutableDictionary(construction => construction.Name);

    private static Construction Layered(string name, double thicknessMetres) => new()
    {
        Name = new(name),
        Description = name,
        Use = ConstructionUse.Wall,
        Spread = new(2),
        Source = "assumed",
        Layers = [new(new() { Name = name, Edition = "assumed", A = 4, B = 0, C = 0.02, D = 0, FrequencyGigahertz = new(1, 40, "GHz"), Source = "assumed" }, thicknessMetres)],
    };

    private static Room Room(string name, double left, double low, double right, double high) =>
        new(new(name), Polygon.Rectangle(At(left, low), At(right, high)));

    private static Wall Outer(string name, PlanPoint start, PlanPoint end, string room, params ReadOnlySpan<Opening> openings) =>
        new() { Name = name, Start = start, End = end, Construction = new("cavity-brick"), Openings = [.. openings], Rooms = [new(room)] };

    private static Wall Inner(string name, PlanPoint start, PlanPoint end, string construction, params ReadOnlySpan<Opening> openings) =>
        new()
        {
            Name = name,
            Start = start,
            End = end,
            Construction = new(construction),
            Openings = [.. openings],
            Rooms = [.. name.Split(" | ").Select(room => new RoomName(room))],
        };

    private static Opening Door(string name, double offset, double width) =>
        new() { Name = name, Kind = OpeningKind.Door, OffsetMetres = offset, WidthMetres = width, HeightMetres = 1.98, Construction = new("door-timber") };

    private static Opening Window(string name, double offset, double width) =>
        new() { Name = name, Kind = OpeningKind.Window, OffsetMetres = offset, WidthMetres = width, SillMetres = 0.9, HeightMetres = 1.1, Construction = new("glazing") };
}
