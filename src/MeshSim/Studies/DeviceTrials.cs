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
    private readonly StateGraphs graphs;
    private readonly DeviceStanding now;
    private readonly ImmutableArray<DeviceReach> before;

    /// <summary>Lists what could be tried; nothing when there is nothing to mend.</summary>
    /// <param name="coverage">The device's network as it is.</param>
    /// <param name="graphs">Its links in any state.</param>
    /// <param name="device">The device.</param>
    /// <param name="options">Model and state.</param>
    public DeviceTrials(NetworkCoverage coverage, StateGraphs graphs, Device device, StudyOptions options)
    {
        (home, network, this.graphs, this.device, this.options) = (coverage.Home, coverage.Network, graphs, device, options);
        before = coverage.Devices;
        now = Run(home, network, graphs, device.Id, options).Standing;
        bool needsNone = !now.IsOn || device.Id == network.Coordinator || (now.IsReached && now.Outages.Drops.IsEmpty);
        IEnumerable<Device> missed = home.DevicesOf(network).Where(other =>
            other.Id != device.Id && (now.Outages.Missed.Contains(other.Id) || options.State?.TurnsOff(other) == true));
        Candidates = needsNone ? [] : [.. FixCandidates.ForDevice(home, network, device, now.Link, missed)];
    }

    /// <summary>What is tried.</summary>
    public ImmutableArray<Fix> Candidates { get; }

    /// <summary>How the device stands.</summary>
    public DeviceStanding Now => now;

    /// <summary>How the device would stand in each other network.</summary>
    public ImmutableArray<(Network Network, DeviceStanding Standing)> Elsewhere() =>
    [
        .. from other in home.Networks
           where other.Name != network.Name && other.Coordinator != device.Id
           select (other, StandingIn(new ChangeNetwork(device.Id, other).On(home), other, options)),
    ];

    /// <summary>
    /// The changes that help and cost no other device its way. Those that serve the device come first, then those with the fewest
    /// everyday outages left, cures before habits, what concerns the device alone before what concerns the whole network, those
    /// that leave the fewest others with one way; then by margin. When one serves the device, those that do not are left out.
    /// </summary>
    public ImmutableArray<DeviceFix> Helping()
    {
        var tried = new DeviceFix?[Candidates.Length];
        Parallel.For(0, tried.Length, index => tried[index] = Try(Candidates[index]));
        DeviceFix[] helping = [.. tried.OfType<DeviceFix>().Where(Helps)];
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
        Network same = Named(changed, network.Name);
        (ImmutableArray<DeviceReach> own, DeviceStanding standing) = Run(changed, same, graphs.After(changed, same), device.Id, then);
        if (fix.MovesTo is { } other) standing = StandingIn(changed, Named(changed, other), then);
        return FixRanking.Loses(before, own, device.Id) ? null : new(fix, standing, FixRanking.LeftWithOneWay(before, own, device.Id));
    }

    /// <summary>The same state in the changed home.</summary>
    internal static StudyOptions InChanged(Home changed, StudyOptions options) =>
        options.State is { } state ? options with { State = changed.States.FirstOrDefault(other => other.Name == state.Name) ?? state } : options;

    private static Network Named(Home home, NetworkName name) => home.Networks.First(network => network.Name == name);

    /// <summary>How the device stands in a network that a change has put it into.</summary>
    private DeviceStanding StandingIn(Home changed, Network other, StudyOptions then) =>
        Run(changed, other, new(changed, other, then.Model), device.Id, then).Standing;

    private static (ImmutableArray<DeviceReach> All, DeviceStanding Standing) Run(Home home, Network network, StateGraphs graphs, DeviceId device, StudyOptions options)
    {
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
