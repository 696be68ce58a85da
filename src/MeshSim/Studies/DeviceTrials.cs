using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Mesh;
using MeshSim.Quantities;

namespace MeshSim.Studies;

/// <summary>Tries changes of the home on one device: applies each and computes links and routes again.</summary>
internal sealed class DeviceTrials
{
    /// <summary>A smaller gain is none: the figures themselves are not that sure.</summary>
    private static readonly Decibels LeastGain = new(1);

    private readonly Home home;
    private readonly Network network;
    private readonly Device device;
    private readonly StudyOptions options;
    private readonly DeviceStanding now;
    private readonly ImmutableArray<DeviceReach> before;

    /// <summary>Lists what could be tried; nothing when there is nothing to mend.</summary>
    public DeviceTrials(Home home, Network network, Device device, StudyOptions options, NetworkCoverage coverage, DeviceStanding now)
    {
        (this.home, this.network, this.device, this.options, this.now) = (home, network, device, options, now);
        before = coverage.Devices;
        bool needsNone = !now.IsOn || device.Id == network.Coordinator || (now.IsReached && now.Outages.Drops.IsEmpty);
        IEnumerable<Device> missed = home.DevicesOf(network).Where(other =>
            other.Id != device.Id && (now.Outages.Missed.Contains(other.Id) || options.State?.TurnsOff(other) == true));
        Candidates = needsNone ? [] : [.. FixCandidates.ForDevice(home, network, device, now.Link, missed)];
    }

    /// <summary>What is tried.</summary>
    public ImmutableArray<Fix> Candidates { get; }

    /// <summary>How a device stands in a network that it belongs to.</summary>
    public static DeviceStanding StandingOf(Home home, Network network, DeviceId device, StudyOptions options) =>
        Run(home, network, device, options).Standing;

    /// <summary>How the device would stand in each other network.</summary>
    public ImmutableArray<(Network Network, DeviceStanding Standing)> Elsewhere() =>
    [
        .. from other in home.Networks
           where other.Name != network.Name && other.Coordinator != device.Id
           select (other, StandingOf(new ChangeNetwork(device.Id, other).On(home), other, device.Id, options)),
    ];

    /// <summary>
    /// The changes that help and cost no other device its way. Those that serve the device come first, then those with the fewest
    /// everyday outages left, cures before habits, what concerns the device alone before what concerns the whole network, those
    /// that leave the fewest others with one way; then by margin. When one serves the device, those that do not are left out.
    /// </summary>
    public ImmutableArray<DeviceFix> Helping()
    {
        DeviceFix[] helping = [.. Candidates.Select(Try).OfType<DeviceFix>().Where(Helps)];
        bool isServed = Array.Exists(helping, fix => fix.After.IsReached);
        return FixRanking.Shortened(
            helping.Where(fix => fix.After.IsReached || !isServed)
                .OrderByDescending(fix => fix.After.IsReached)
                .ThenBy(fix => fix.After.Outages.Everyday)
                .ThenBy(fix => fix.Fix.IsHabit)
                .ThenBy(fix => fix.Fix.ConcernsAll)
                .ThenBy(fix => fix.LeftWithOneWay)
                .ThenByDescending(fix => fix.After.Margin)
                .ThenBy(fix => fix.Fix.Words, StringComparer.Ordinal),
            fix => fix.Fix);
    }

    private bool Helps(DeviceFix fix) => now.IsReached
        ? fix.After.IsReached && fix.After.Outages.Drops.Length < now.Outages.Drops.Length
        : fix.After.IsReached || fix.After.Margin - now.Margin >= LeastGain;

    /// <summary>What a change makes of the device; null when it costs another one its way.</summary>
    private DeviceFix? Try(Fix fix)
    {
        Home changed = fix.On(home);
        StudyOptions then = InChanged(changed, options);
        (ImmutableArray<DeviceReach> own, DeviceStanding standing) = Run(changed, Named(changed, network.Name), device.Id, then);
        if (fix.MovesTo is { } other) standing = StandingOf(changed, Named(changed, other), device.Id, then);
        return FixRanking.Loses(before, own, device.Id) ? null : new(fix, standing, FixRanking.LeftWithOneWay(before, own, device.Id));
    }

    /// <summary>The same state in the changed home.</summary>
    internal static StudyOptions InChanged(Home changed, StudyOptions options) =>
        options.State is { } state ? options with { State = changed.States.FirstOrDefault(other => other.Name == state.Name) ?? state } : options;

    private static Network Named(Home home, NetworkName name) => home.Networks.First(network => network.Name == name);

    private static (ImmutableArray<DeviceReach> All, DeviceStanding Standing) Run(Home home, Network network, DeviceId device, StudyOptions options)
    {
        var graphs = new StateGraphs(home, network, options.Model);
        MeshGraph graph = graphs.In(options.State);
        ImmutableArray<DeviceReach> all = Routing.ReachOf(graph);
        DeviceReach? reach = all.FirstOrDefault(reach => reach.Device == device);
        if (reach is not null) reach = new Commands(network.Radio, home.ParametersOf(network).Shadowing, graph.Links).On(reach);
        return (all, new DeviceStanding
        {
            IsOn = graph.Devices.Contains(device),
            Reach = reach,
            Link = reach is null ? null : LinkOf(graph, reach),
            Outages = DeviceOutages.Of(home, network, graphs, options.State, device),
        });
    }

    /// <summary>The first link of a device's route, or the one that comes nearest to being one.</summary>
    internal static Link? LinkOf(MeshGraph graph, DeviceReach reach) => reach.Route is { } route
        ? graph.Links.First(link => (link.From == reach.Device && link.To == route.Path[1]) || (link.To == reach.Device && link.From == route.Path[1]))
        : reach.NearestLink;
}
