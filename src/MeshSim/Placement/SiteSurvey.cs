using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Radio;

namespace MeshSim.Placement;

/// <summary>
/// A survey of one network from which the problem with the coordinator at any of some sites can be taken: the links among all other
/// nodes are computed once.
/// </summary>
internal sealed class SiteSurvey
{
    private readonly DeviceId coordinator;
    private readonly PlacementNodes nodes;
    private readonly ImmutableArray<(SurveyedLinks Links, ImmutableArray<int> Off)> situations;

    /// <summary>Surveys a network.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="graphs">Its links in any state.</param>
    /// <param name="everyday">The state planned for; null when everything is on and every door closed.</param>
    /// <param name="held">States in which devices must be reached too.</param>
    /// <param name="sites">Where the coordinator could go. Where it is put, it has power in each of the states.</param>
    /// <param name="shared">The outlets that take a repeater although a router of the network is plugged in there.</param>
    /// <param name="isPessimistic">Whether every loss is one standard deviation dearer than computed.</param>
    public SiteSurvey(
        Home home,
        Network network,
        StateGraphs graphs,
        State? everyday,
        ImmutableArray<State> held,
        ImmutableArray<Outlet> sites,
        ImmutableHashSet<OutletId>? shared = null,
        bool isPessimistic = false)
    {
        MarginUncertainties? dearer = isPessimistic ? new(home, network) : null;
        coordinator = network.Coordinator;
        State?[] states = [everyday, .. held];
        bool isStar = network.Radio.Topology == Topology.Star;
        nodes = new(
            [.. home.DevicesOf(network).Where(device => Array.Exists(states, state => HasPower(device, state)))],
            isStar ? [] : [.. home.Outlets.Where(outlet => HasPower(outlet, everyday) && (shared?.Contains(outlet.Id) == true || !IsTaken(home, network, outlet)))],
            isStar ? [] : [.. home.DevicesOf(network).Where(device => device.Role == Role.Router && held.Any(state => CouldStayOn(device, state)))],
            sites);
        Dictionary<MeshGraph, SurveyedLinks> links = [];
        situations = [.. states.Select((state, index) => (LinksIn(state), OffIn(state, isEveryday: index == 0)))];

        SurveyedLinks LinksIn(State? state)
        {
            // Power decides who takes part, doors alone decide the links: states with the same doors share their graph.
            MeshGraph graph = graphs.WithAllPower(state);
            if (!links.TryGetValue(graph, out SurveyedLinks? known)) links[graph] = known = new(home, network, graph, graphs.ModelIn(state), nodes, dearer);
            return known;
        }
    }

    /// <summary>Number of nodes: devices, outlets, and devices that could be kept powered.</summary>
    public int NodeCount => nodes.Count;

    /// <summary>The problem with the coordinator where it is.</summary>
    public RepeaterSurvey WithHubInPlace() => Survey(links => links.Problem);

    /// <summary>The problem with the coordinator at a site, in the open.</summary>
    public RepeaterSurvey WithHubAt(int site) => Survey(links => links.WithHubAt(site));

    private RepeaterSurvey Survey(Func<SurveyedLinks, RepeaterProblem> problemOf)
    {
        Dictionary<SurveyedLinks, RepeaterProblem> problems = situations.Select(s => s.Links).Distinct().ToDictionary(links => links, problemOf);
        return new([.. situations.Select(s => new Situation(problems[s.Links], s.Off))], nodes.Devices, nodes.Outlets, nodes.Kept);
    }

    private ImmutableArray<int> OffIn(State? state, bool isEveryday)
    {
        (int outlets, int kept) = (nodes.Devices.Length, nodes.Devices.Length + nodes.Outlets.Length);
        return
        [
            .. Enumerable.Range(0, outlets).Where(i => !HasPower(nodes.Devices[i], state)),
            .. Enumerable.Range(0, nodes.Outlets.Length).Where(i => !HasPower(nodes.Outlets[i], state)).Select(i => outlets + i),
            .. Enumerable.Range(0, nodes.Kept.Length).Where(i => isEveryday || !CouldStayOn(nodes.Kept[i], state!)).Select(i => kept + i),
        ];
    }

    /// <summary>Whether a state turns a device off in a way that a person could do without: no circuit is off.</summary>
    private static bool CouldStayOn(Device device, State state) =>
        state.TurnsOff(device) && (device.Circuit is not { } circuit || !state.CircuitsOff.Contains(circuit));

    /// <summary>Whether a router of the network is plugged in there already: a second one at the same place would hear what the first hears.</summary>
    private static bool IsTaken(Home home, Network network, Outlet outlet) => home.DevicesOf(network).Any(device => IsPluggedIn(device, outlet));

    /// <summary>Whether a device is a router that takes an outlet.</summary>
    public static bool IsPluggedIn(Device device, Outlet outlet) =>
        device.Role == Role.Router && (device.Storey, device.Point, device.HeightMetres) == (outlet.Storey, outlet.Point, outlet.HeightMetres);

    /// <summary>Whether a device has power in a state. The coordinator's is taken for granted: at another place something else feeds it.</summary>
    private bool HasPower(Device device, State? state) => device.Id == coordinator || state?.TurnsOff(device) != true;

    private static bool HasPower(Outlet outlet, State? state) =>
        state is null || outlet.Circuit is not { } circuit || !state.CircuitsOff.Contains(circuit);
}
