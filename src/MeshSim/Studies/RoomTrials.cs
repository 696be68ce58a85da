using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Mesh;
using MeshSim.Mesh.Outages;

namespace MeshSim.Studies;

/// <summary>Tries changes of the home on one room: applies each and computes links, routes and the room's floor again.</summary>
internal sealed class RoomTrials
{
    /// <summary>What the device is called that is carried around.</summary>
    public static readonly DeviceId Carried = new("carried-device");

    /// <summary>A smaller change of the dark share is none: a point of the grid more or less.</summary>
    private const double LeastGain = 0.01;

    private readonly NetworkCoverage coverage;
    private readonly StudyOptions options;
    private readonly RoomGrid grid;
    private readonly StoreyName storey;

    /// <summary>Computes how the room stands and lists what could be tried; nothing when no part of it is ever dark.</summary>
    public RoomTrials(Storey storey, Room room, NetworkCoverage coverage, StudyOptions options)
    {
        (this.coverage, this.options, this.storey) = (coverage, options, storey.Name);
        grid = new RoomGrid(coverage.Home.FloorPlan, storey, room, options.GridStepMetres, options.ProbeHeightMetres);
        Now = StandingIn(coverage);
        Link = LinkAt(Now.WorstPlace, room.Name);
        IEnumerable<Device> missed = coverage.Home.DevicesOf(coverage.Network).Where(device => options.State?.TurnsOff(device) == true);
        Candidates = Now.DarkShare == 0 ? [] : [.. FixCandidates.ForNetwork(coverage.Home, coverage.Network, Link, missed)];
    }

    /// <summary>How the room stands.</summary>
    public RoomStanding Now { get; }

    /// <summary>The best link of a device at the worst place; null when there is none.</summary>
    public Link? Link { get; }

    /// <summary>What is tried.</summary>
    public ImmutableArray<Fix> Candidates { get; }

    /// <summary>A room and its storey.</summary>
    /// <exception cref="ArgumentException">The home has no such room.</exception>
    public static (Storey Storey, Room Room) Find(Home home, RoomName name)
    {
        foreach (Storey level in home.FloorPlan.Storeys)
            if (level.Rooms.FirstOrDefault(room => room.Name == name) is { } room) return (level, room);
        throw new ArgumentException($"no room is called \"{name}\"", nameof(name));
    }

    /// <summary>The outages, single routers included, in which more of the room is dark.</summary>
    public ImmutableArray<(Outage Outage, double DarkShare)> Darkened() =>
    [
        .. from outage in OutageList.Of(coverage.Home, coverage.Network, options.State)
           let off = coverage.Home.DevicesOf(coverage.Network).Where(outage.State.TurnsOff).Select(device => device.Id).ToArray()
           where off.Length > 0 && !off.Contains(coverage.Network.Coordinator)
           let share = StandingIn(Bare(coverage.Home, coverage.Network, options with { State = outage.State })).DarkShare
           where share >= Now.DarkShare + LeastGain
           select (outage, share),
    ];

    /// <summary>How much of the room is dark in each other network.</summary>
    public ImmutableArray<(Network Network, double DarkShare)> Elsewhere() =>
    [
        .. coverage.Home.Networks.Where(other => other.Name != coverage.Network.Name)
            .Select(other => (other, StandingIn(Bare(coverage.Home, other, options)).DarkShare)),
    ];

    /// <summary>
    /// The changes that leave less of the room dark and cost no device its way: by what stays dark, cures before habits, additions
    /// before changes to the whole network, those that leave the fewest devices with one way; then by the worst place.
    /// </summary>
    public ImmutableArray<RoomFix> Helping() => FixRanking.Shortened(
        Candidates.Select(Try).OfType<RoomFix>().Where(fix => fix.After.DarkShare <= Now.DarkShare - LeastGain)
            .OrderBy(fix => fix.After.DarkShare)
            .ThenBy(fix => fix.Fix.IsHabit)
            .ThenBy(fix => fix.Fix.ConcernsAll)
            .ThenBy(fix => fix.LeftWithOneWay)
            .ThenByDescending(fix => fix.After.Worst)
            .ThenBy(fix => fix.Fix.Words, StringComparer.Ordinal),
        fix => fix.Fix);

    /// <summary>A battery device in the open, put at a place of a room.</summary>
    internal static Device CarriedAt(NetworkCoverage coverage, StoreyName storey, PlanPoint place, double heightMetres, RoomName room) => new()
    {
        Id = Carried,
        Name = Carried.Value,
        Network = coverage.Network.Name,
        Power = PowerSource.Battery,
        Role = Role.EndDevice,
        Storey = storey,
        Point = place,
        HeightMetres = heightMetres,
        Room = room,
        Mounting = InTheOpen.In(coverage.Home),
    };

    private RoomFix? Try(Fix fix)
    {
        Home changed = fix.On(coverage.Home);
        Network network = changed.Networks.First(network => network.Name == coverage.Network.Name);
        NetworkCoverage after = Bare(changed, network, DeviceTrials.InChanged(changed, options));
        return FixRanking.Loses(coverage.Devices, after.Devices, except: null)
            ? null
            : new(fix, StandingIn(after), FixRanking.LeftWithOneWay(coverage.Devices, after.Devices, except: null));
    }

    /// <summary>Links and routes without what commands take: nobody asks that here, and it takes longer than all the rest.</summary>
    private static NetworkCoverage Bare(Home home, Network network, StudyOptions options)
    {
        MeshGraph graph = new StateGraphs(home, network, options.Model).In(options.State);
        return new NetworkCoverage
        {
            Home = home,
            Network = network,
            Model = options.Model,
            State = options.State,
            DesignMargin = graph.DesignMargin,
            Links = graph.Links,
            Devices = Routing.ReachOf(graph),
        };
    }

    private RoomStanding StandingIn(NetworkCoverage coverage) =>
        grid.Judge(MarginMapping.Over(coverage, grid.Grid), coverage.DesignMargin);

    /// <summary>The best link of a battery device put at a place of the room, to anybody whom it could speak to.</summary>
    private Link? LinkAt(PlanPoint place, RoomName room)
    {
        (Home home, Network network) = (coverage.Home, coverage.Network);
        Device carried = CarriedAt(coverage, storey, place, options.ProbeHeightMetres, room);
        HashSet<DeviceId> relays = [.. MarginMapping.RelaysOf(coverage).Select(relay => relay.Id)];
        return Bare(home with { Devices = home.Devices.Add(carried) }, network, options).Links
            .Where(link => link.To == Carried && relays.Contains(link.From))
            .OrderByDescending(link => link.Margin).ThenBy(link => link.From)
            .FirstOrDefault();
    }
}
