using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Mesh;

/// <summary>
/// The devices of one network that have power, and the links that a plan may count on. A frame travels from a device over
/// routers to the coordinator; end devices relay nothing, and in a star only the coordinator's own links count.
/// </summary>
public sealed class MeshGraph
{
    private readonly Network network;
    private readonly ImmutableArray<Device> on;
    private readonly ImmutableArray<(int Neighbour, Link Link)>[] usable;

    /// <summary>Lays out the graph.</summary>
    /// <param name="network">The network.</param>
    /// <param name="devices">Its devices that have power, in the home's order.</param>
    /// <param name="links">Links among them; every end must be one of the devices.</param>
    /// <param name="designMargin">The margin that a link must have to count.</param>
    /// <exception cref="ArgumentException">Two devices share an id, or a link ends at an unknown device.</exception>
    public MeshGraph(Network network, IEnumerable<Device> devices, ImmutableArray<Link> links, Decibels designMargin)
    {
        this.network = network;
        on = [.. devices];
        Devices = [.. on.Select(device => device.Id)];
        DesignMargin = designMargin;
        Coordinator = Devices.IndexOf(network.Coordinator);
        HopLimit = network.HopLimit;
        Topology = network.Radio.Topology;
        Links = links;

        var indexOf = Devices.Select((id, index) => (id, index)).ToDictionary(entry => entry.id, entry => entry.index);
        var neighbours = new List<(int Neighbour, Link Link)>[on.Length];
        for (int i = 0; i < on.Length; i++)
            neighbours[i] = [];
        foreach (Link link in links)
        {
            int from = IndexOf(link.From), to = IndexOf(link.To);
            if (link.Margin < designMargin || !double.IsFinite(link.Etx)) continue;
            neighbours[from].Add((to, link));
            neighbours[to].Add((from, link));
        }

        usable = [.. neighbours.Select(list => list.OrderBy(entry => Devices[entry.Neighbour]).ToImmutableArray())];

        int IndexOf(DeviceId id) =>
            indexOf.TryGetValue(id, out int index) ? index : throw new ArgumentException($"a link ends at unknown device \"{id}\"", nameof(links));
    }

    /// <summary>The devices that have power, in the home's order. A node of the graph is its index here.</summary>
    public ImmutableArray<DeviceId> Devices { get; }

    /// <summary>The coordinator's node, or -1 when it has no power.</summary>
    public int Coordinator { get; }

    /// <summary>Most links in a row.</summary>
    public int HopLimit { get; }

    /// <summary>Mesh or star.</summary>
    public Topology Topology { get; }

    /// <summary>All links that were given, usable or not.</summary>
    public ImmutableArray<Link> Links { get; }

    /// <summary>The margin that a link must have to be usable.</summary>
    public Decibels DesignMargin { get; }

    /// <summary>The usable links of a node, by the id of the other end.</summary>
    public ImmutableArray<(int Neighbour, Link Link)> UsableLinks(int node) => usable[node];

    /// <summary>Whether a node takes frames of others and passes them on: the coordinator always, routers in a mesh.</summary>
    public bool Relays(int node) => node == Coordinator || (Topology == Topology.Mesh && on[node].Role == Role.Router);

    /// <summary>The same without some devices and their links: nobody's other links change when a device loses its power.</summary>
    public MeshGraph Without(IEnumerable<DeviceId> devices)
    {
        HashSet<DeviceId> off = [.. devices];
        if (off.Count == 0) return this;
        IEnumerable<Link> left = Links.Where(link => !off.Contains(link.From) && !off.Contains(link.To));
        return new(network, on.Where(device => !off.Contains(device.Id)), [.. left], DesignMargin);
    }

    /// <summary>The same with one more device, or with a device in another role.</summary>
    /// <param name="device">The device; it takes the place of one with the same id.</param>
    /// <param name="links">Its links to the devices of the graph that are not there yet.</param>
    public MeshGraph With(Device device, IEnumerable<Link> links)
    {
        int known = Devices.IndexOf(device.Id);
        return new(network, known < 0 ? on.Add(device) : on.SetItem(known, device), [.. Links, .. links], DesignMargin);
    }
}
