using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Studies;
using MeshSim.Tests.Mesh;

namespace MeshSim.Tests.Placement;

/// <summary>
/// A home with a router at every outlet, of which any subset can be plugged in, in every state that must hold: routing says who has a
/// way in each, and all subsets are tried.
/// </summary>
internal sealed class HeldHomeTrial
{
    private readonly Home home;
    private readonly Network network;
    private readonly Device[] routers;
    private readonly DeviceId[] keepable;
    private readonly StateGraphs graphs;
    private readonly State?[] states;

    /// <summary>Tries a home out.</summary>
    /// <param name="home">The home, its coordinator where it is to be tried.</param>
    public HeldHomeTrial(Home home)
    {
        (this.home, network) = (home, home.Networks[0]);
        routers = [.. home.Outlets.Select((outlet, i) => MeshSamples.Device(home.Devices.Length + i, Role.Router) with
        {
            Storey = outlet.Storey,
            Point = outlet.Point,
            HeightMetres = outlet.HeightMetres,
            Circuit = outlet.Circuit,
        })];
        graphs = new(home with { Devices = [.. home.Devices, .. routers] }, network, new StudyOptions().Model);
        states = [null, .. home.States.Where(state => state.MustHold)];

        // No router of these homes has a switch: what turns one off is its name, its circuit, or both.
        keepable = [.. home.Devices.Where(device => device.Role == Role.Router && home.States.Any(state => state.DevicesOff.Contains(device.Id))).Select(device => device.Id)];
        string everything = OutOfReach(Subsets - 1);
        OutOfReachEveryday = everything.Split('\n').Count(line => line.StartsWith(':'));
        Unserved = [.. everything.Split('\n').Select(line => line.Split(':')[^1]).Where(id => id.Length > 0).Distinct().Order(StringComparer.Ordinal)];
        Cost = Enumerable.Range(0, Subsets).OrderBy(CostOf).Where(subset => OutOfReach(subset) == everything).Select(CostOf).First();
    }

    /// <summary>The devices without a way in some state in which they have power, with everything plugged in and kept powered.</summary>
    public string[] Unserved { get; }

    /// <summary>How many of them have none everyday.</summary>
    public int OutOfReachEveryday { get; }

    /// <summary>The least cost with which nobody else is out of reach in any state.</summary>
    public int Cost { get; }

    private int Subsets => 1 << (routers.Length + keepable.Length);

    private int CostOf(int subset) =>
        (int.PopCount(subset & ((1 << routers.Length) - 1)) * home.Costs.Repeater) + (int.PopCount(subset >> routers.Length) * home.Costs.SwitchGivenUp);

    /// <summary>Who has power and no way, a line for each state and device.</summary>
    private string OutOfReach(int subset)
    {
        DeviceId[] unplugged = [.. routers.Where((_, i) => (subset >> i & 1) == 0).Select(router => router.Id)];
        ImmutableArray<DeviceId> kept = [.. keepable.Where((_, i) => (subset >> (routers.Length + i) & 1) != 0)];
        return string.Join('\n', states.SelectMany(state => InState(state, unplugged, kept)));
    }

    private IEnumerable<string> InState(State? state, DeviceId[] unplugged, ImmutableArray<DeviceId> kept)
    {
        MeshGraph graph = graphs.In(state, [.. kept.Where(id => IsOnCircuit(state, id))]).Without(unplugged);
        ImmutableArray<Route?> routes = Routing.LeastEtx(graph);
        return home.Devices.Where(device => device.Id != network.Coordinator && state?.TurnsOff(device) != true)
            .Where(device => routes[graph.Devices.IndexOf(device.Id)] is null)
            .Select(device => $"{state?.Name}:{device.Id}");
    }

    private bool IsOnCircuit(State? state, DeviceId id) =>
        home.Devices.First(device => device.Id == id).Circuit is not { } circuit || state?.CircuitsOff.Contains(circuit) != true;
}
