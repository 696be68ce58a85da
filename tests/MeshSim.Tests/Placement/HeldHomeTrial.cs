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
    private readonly Home _home;
    private readonly Network _network;
    private readonly Device[] _routers;
    private readonly DeviceId[] _keepable;
    private readonly StateGraphs _graphs;
    private readonly State?[] _states;

    /// <summary>Tries a home out.</summary>
    /// <param name="home">The home, its coordinator where it is to be tried.</param>
    public HeldHomeTrial(Home home)
    {
        (_home, _network) = (home, home.Networks[0]);
        _routers = [.. home.Outlets.Select((outlet, i) => MeshSamples.Device(home.Devices.Length + i, Role.Router) with
        {
            Storey = outlet.Storey,
            Point = outlet.Point,
            HeightMetres = outlet.HeightMetres,
            Circuit = outlet.Circuit,
        })];
        _graphs = new(home with { Devices = [.. home.Devices, .. _routers] }, _network, new StudyOptions().Model);
        _states = [null, .. home.States.Where(state => state.MustHold)];

        // No router of these homes has a switch: what turns one off is its name, its circuit, or both.
        _keepable = [.. home.Devices.Where(device => device.Role == Role.Router && home.States.Any(state => state.DevicesOff.Contains(device.Id))).Select(device => device.Id)];
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

    private int Subsets => 1 << (_routers.Length + _keepable.Length);

    private int CostOf(int subset) =>
        (int.PopCount(subset & ((1 << _routers.Length) - 1)) * _home.Costs.Repeater) + (int.PopCount(subset >> _routers.Length) * _home.Costs.SwitchGivenUp);

    /// <summary>Who has power and no way, a line for each state and device.</summary>
    private string OutOfReach(int subset)
    {
        DeviceId[] unplugged = [.. _routers.Where((_, i) => (subset >> i & 1) == 0).Select(router => router.Id)];
        ImmutableArray<DeviceId> kept = [.. _keepable.Where((_, i) => (subset >> (_routers.Length + i) & 1) != 0)];
        return string.Join('\n', _states.SelectMany(state => InState(state, unplugged, kept)));
    }

    private IEnumerable<string> InState(State? state, DeviceId[] unplugged, ImmutableArray<DeviceId> kept)
    {
        MeshGraph graph = _graphs.In(state, [.. kept.Where(id => IsOnCircuit(state, id))]).Without(unplugged);
        ImmutableArray<Route?> routes = Routing.LeastEtx(graph);
        return _home.Devices.Where(device => device.Id != _network.Coordinator && state?.TurnsOff(device) != true)
            .Where(device => routes[graph.Devices.IndexOf(device.Id)] is null)
            .Select(device => $"{state?.Name}:{device.Id}");
    }

    private bool IsOnCircuit(State? state, DeviceId id) =>
        _home.Devices.First(device => device.Id == id).Circuit is not { } circuit || state?.CircuitsOff.Contains(circuit) != true;
}
