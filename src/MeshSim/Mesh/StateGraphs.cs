using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Propagation;
using MeshSim.Quantities;

namespace MeshSim.Mesh;

/// <summary>
/// The graph of one network in any state of the house. Doors decide the links, power only who takes part: the links are computed
/// once for each set of open doors, and an outage costs no more than leaving devices out. It may be asked from several threads.
/// </summary>
public sealed class StateGraphs
{
    private readonly Home home;
    private readonly Network network;
    private readonly ModelName model;
    private readonly ImmutableArray<Device> devices;
    private readonly StateGraphs? before;
    private readonly Lock gate = new();
    private readonly Dictionary<string, (MeshGraph Graph, Commands Commands)> ofDoors = new(StringComparer.Ordinal);

    /// <summary>Nothing is computed yet.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="model">The path-loss model.</param>
    public StateGraphs(Home home, Network network, ModelName model)
        : this(home, network, model, null)
    {
    }

    private StateGraphs(Home home, Network network, ModelName model, StateGraphs? before)
    {
        this.home = home;
        this.before = before;
        this.network = network;
        this.model = model;
        devices = [.. home.DevicesOf(network)];
        DesignMargin = home.ParametersOf(network).DesignMargin;
    }

    /// <summary>The margin that a link must have to count.</summary>
    public Decibels DesignMargin { get; }

    /// <summary>
    /// The graphs of a network after a change of the home. Where nothing but devices changed, links between those that stay as they were are taken over.
    /// </summary>
    /// <param name="changed">The home after the change.</param>
    /// <param name="then">One of its networks.</param>
    public StateGraphs After(Home changed, Network then)
    {
        ArgumentNullException.ThrowIfNull(changed);
        bool isOfDevices = then == network && changed with { Devices = home.Devices } == home;
        return new(changed, then, model, isOfDevices ? this : null);
    }

    /// <summary>The graph in a state; null is everything on and every door closed.</summary>
    /// <exception cref="ArgumentException">The state opens a door that the home does not have.</exception>
    public MeshGraph In(State? state) => In(state, []);

    /// <summary>The graph in a state in which some devices keep their power all the same.</summary>
    /// <param name="state">The state.</param>
    /// <param name="keptOn">Who keeps power.</param>
    /// <exception cref="ArgumentException">The state opens a door that the home does not have.</exception>
    public MeshGraph In(State? state, ImmutableArray<DeviceId> keptOn) =>
        OfDoors(state).Graph.Without(devices.Where(device => state?.TurnsOff(device) == true && !keptOn.Contains(device.Id)).Select(device => device.Id));

    /// <summary>Commands over the links with the doors of a state.</summary>
    /// <exception cref="ArgumentException">The state opens a door that the home does not have.</exception>
    public Commands CommandsIn(State? state) => OfDoors(state).Commands;

    /// <summary>The graph with every device on and the doors of a state; the same object for states with the same doors.</summary>
    /// <exception cref="ArgumentException">The state opens a door that the home does not have.</exception>
    public MeshGraph WithAllPower(State? state) => OfDoors(state).Graph;

    /// <summary>The path-loss model with the doors of a state.</summary>
    /// <exception cref="ArgumentException">The state opens a door that the home does not have.</exception>
    public IPathLossModel ModelIn(State? state) => home.ModelOf(network, model, state);

    private (MeshGraph Graph, Commands Commands) OfDoors(State? state)
    {
        string key = string.Join('\n', (state?.Open ?? []).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
        lock (gate)
        {
            if (ofDoors.TryGetValue(key, out (MeshGraph, Commands) known)) return known;

            ImmutableArray<Link> links = LinkTable.Compute(home, network, ModelIn(state), state: null, before?.LinksAmong(devices, state));
            return ofDoors[key] = (new(network, devices, links, DesignMargin), new(network.Radio, home.ParametersOf(network).Shadowing, links));
        }
    }

    /// <summary>The links between devices that are among some just as they are here.</summary>
    private Dictionary<(DeviceId From, DeviceId To), Link> LinksAmong(ImmutableArray<Device> others, State? state)
    {
        HashSet<DeviceId> same = [.. devices.Intersect(others).Select(device => device.Id)];
        return OfDoors(state).Graph.Links.Where(link => same.Contains(link.From) && same.Contains(link.To)).ToDictionary(link => (link.From, link.To));
    }
}
