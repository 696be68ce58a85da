using System.Collections.Immutable;
using MeshSim.Cli.Answers;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Mesh;
using MeshSim.Mesh.Outages;
using MeshSim.Placement;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;
using MeshSim.Radio;
using MeshSim.Studies;

namespace MeshSim.Cli.Tests;

/// <summary>Answers made by hand, so that their wording can be tested without computing anything. All figures are invented.</summary>
internal static class Samples
{
    private static readonly StoreyName Ground = new("ground");
    private static readonly DeviceId Stick = new("stick"), Plug = new("plug"), Lamp = new("lamp"), Shed = new("shed-sensor");

    public static Network Network { get; } = new()
    {
        Name = new("plugs"),
        Radio = new()
        {
            Name = "sample",
            Description = "sample mesh",
            Standard = "none",
            FirstCarrier = new(2405),
            FirstChannel = 11,
            LastChannel = 26,
            ChannelStepMegahertz = 5,
            Topology = Topology.Mesh,
            Modulation = Modulation.OQpsk,
            BitRateKilobitsPerSecond = 250,
            NoiseBandwidthKilohertz = 2000,
            Sensitivity = new(-95),
            SensitivityFrameOctets = 20,
            NoiseFigure = new(10),
            TransmitPower = new(5),
            AntennaGain = new(0),
            HopLimit = 4,
            FrameOctets = 60,
            OverheadOctets = 6,
            Source = "invented",
        },
        Channel = 18,
        Coordinator = Stick,
        HopLimit = 4,
    };

    public static Home Home { get; } = new()
    {
        Name = "Sample",
        Region = "EU",
        FloorPlan = new([new() { Name = Ground, ElevationMetres = 0, CeilingMetres = 2.4, Rooms = [Square("hall", 0), Square("<shed> & co", 4)] }]),
        Constructions = ImmutableDictionary<ConstructionName, Construction>.Empty,
        Networks = [Network],
        Devices = [Device(Stick, Role.Coordinator, 1), Device(Plug, Role.Router, 2), Device(Lamp, Role.Router, 3), Device(Shed, Role.EndDevice, 6)],
        Outlets = [Outlet("shed-wall", isAssumed: true)],
    };

    /// <summary>The lamp goes by the plug; the sensor in the shed lacks 3.2 dB to the lamp.</summary>
    public static NetworkCoverage Coverage { get; } = new()
    {
        Home = Home,
        Network = Network,
        Model = ModelName.LogDistance,
        DesignMargin = new(6.4),
        Links = [Link(Stick, Plug, 20), Link(Plug, Lamp, 12.5), Link(Lamp, Shed, 3.2)],
        Devices =
        [
            new() { Device = Plug, Route = Route(20, Plug, Stick), DisjointRoutes = 2, Command = new(0.9995, 4.25, 5.5) },
            new() { Device = Lamp, Route = Route(12.5, Lamp, Plug, Stick), DisjointRoutes = 2, Command = new(0.975, 8.5, 12.25) },
            new() { Device = Shed, Route = null, DisjointRoutes = 0, NearestLink = Link(Lamp, Shed, 3.2) },
        ],
    };

    /// <summary>Everything about the network: the plug carries the lamp, and bedtime, which must hold, turns the plug off.</summary>
    public static NetworkAnswer Answer => new(Coverage, Placement, [Map], Routers, Rehearsal);

    private static Outage Bedtime { get; } = new(OutageKind.State, "bedtime", new() { Name = "bedtime", DevicesOff = [Plug], MustHold = true });

    private static NetworkRouters Routers => new()
    {
        Coverage = Coverage,
        Duties = [new() { Device = Plug, Relays = true, IsReached = true, Carries = [Lamp], NeededBy = [Lamp], LeavesOneWay = [], TakenBy = [Bedtime], MissedIn = [Bedtime] }],
        NewRouters = [],
        Considered = 0,
    };

    private static NetworkRehearsal Rehearsal => new()
    {
        Coverage = Coverage,
        Options = new(),
        Rehearsals = [new() { Outage = Bedtime, Off = [Plug], Dropped = [Lamp], LeftWithOneWay = [], Gained = [], Changed = [] }],
        Chances = [],
    };

    /// <summary>One repeater in the shed serves the sensor there.</summary>
    public static RepeaterPlacement Placement { get; } = new()
    {
        Network = Network.Name,
        Repeaters = [new() { Outlet = Home.Outlets[0], Serves = [Shed], UplinkMargin = new(8), DownlinkMargin = new(21.25) }],
        Unserved = [],
        LowerBound = 1,
        OutletsConsidered = 1,
    };

    /// <summary>Two columns, two rows; one point without a value.</summary>
    public static MarginMap Map { get; } = new()
    {
        Network = Network.Name,
        Storey = Ground,
        Margin = new(new FieldGrid(Ground, PlanPoint.FromMetres(-0.5, 0), 5000, 2, 2, 10_000), [10.123f, -3.5f, float.NaN, 0]),
        DesignMargin = new(6.4),
        Rooms = [(new("hall"), 0), (new("<shed> & co"), 0.75)],
    };

    /// <summary>The answers where every device is reached.</summary>
    public static NetworkCoverage AllReached { get; } = Coverage with { Devices = Coverage.Devices.RemoveAt(2) };

    public static Link Link(DeviceId from, DeviceId to, double marginDb) => new()
    {
        From = from,
        To = to,
        PathLoss = new("log-distance", 3.25, [
            new() { Kind = LossKind.Distance, Name = "distance", Loss = new(50.5) },
            new() { Kind = LossKind.Wall, Name = "hall | shed", Construction = new("brick-half"), AngleDegrees = 12.5, Loss = new(4.25), IsExtrapolated = true },
            new() { Kind = LossKind.Mounting, Name = "surface", Loss = new(0) }]),
        Received = new(-50),
        Reverse = new(-52.5),
        Margin = new(marginDb),
        Delivery = 0.75,
        ReverseDelivery = 0.5,
    };

    private static Route Route(double marginDb, params ImmutableArray<DeviceId> path) =>
        new() { Path = path, Etx = path.Length - 1, WeakestMargin = new(marginDb), Delivery = 0.9985 };

    private static Room Square(string name, double leftMetres) => new(new(name), new([
        PlanPoint.FromMetres(leftMetres, 0), PlanPoint.FromMetres(leftMetres + 4, 0),
        PlanPoint.FromMetres(leftMetres + 4, 4), PlanPoint.FromMetres(leftMetres, 4)]));

    private static Device Device(DeviceId id, Role role, double xMetres) => new()
    {
        Id = id,
        Name = id.Value,
        Network = new("plugs"),
        Power = role == Role.EndDevice ? PowerSource.Battery : PowerSource.Mains,
        Role = role,
        Storey = Ground,
        Point = PlanPoint.FromMetres(xMetres, 1),
        HeightMetres = 1,
        Room = new(xMetres < 4 ? "hall" : "<shed> & co"),
        Mounting = new() { Name = "surface", Description = "in the open", Losses = [(new Frequency(2440), Decibels.Zero)], Source = "assumed" },
    };

    private static Outlet Outlet(string id, bool isAssumed) => new()
    {
        Id = new(id),
        Storey = Ground,
        Point = PlanPoint.FromMetres(4.1, 2),
        HeightMetres = 0.3,
        Room = new("<shed> & co"),
        IsAssumed = isAssumed,
    };
}
