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
    private readonly Role[] _roles;
    private readonly ImmutableArray<(int Neighbour, Link Link)>[] _usable;

    /// <summary>Lays out the graph.</summary>
    /// <param name="network">The network.</param>
    /// <param name="devices">Its devices that have power, in the home's order.</param>
    /// <param name="links">Links among them; every end must be one of the devices.</param>
    /// <param name="designMargin">The margin that a link must have to count.</param>
    /// <exception cref="ArgumentException">Two devices share an id, or a link ends at an unknown device.</exception>
    public MeshGraph(Network network, IEnumerable<Device> devices, ImmutableArray<Link> links, Decibels designMargin)
    {
        Device[] on = [.. devices];
        Devices = [.. on.Select(device => device.Id)];
        Coordinator = Devices.IndexOf(network.Coordinator);
        HopLimit = network.HopLimit;
        Topology = network.Radio.Topology;
        Links = links;
        _roles = [.. on.Select(device => device.Role)];

        var indexOf = Devices.Select((id, index) => (id, index)).ToDictionary(entry => entry.id, entry => entry.index);
        var usable = new List<(int Neighbour, Link Link)>[on.Length];
        for (int i = 0; i < on.Length; i++)
            usable[i] = [];
        foreach (Link link in links)
        {
            int from = IndexOf(link.From), to = IndexOf(link.To);
            if (link.Margin < designMargin || !double.IsFinite(link.Etx)) continue;
            usable[from].Add((to, link));
            usable[to].Add((from, link));
        }

        _usable = [.. usable.Select(list => list.OrderBy(entry => Devices[entry.Neighbour]).ToImmutableArray())];

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

    /// <summary>The usable links of a node, by the id of the other end.</summary>
    public ImmutableArray<(int Neighbour, Link Link)> UsableLinks(int node) => _usable[node];

    /// <summary>Whether a node takes frames of others and passes them on: the coordinator always, routers in a mesh.</summary>
    public bool Relays(int node) => node == Coordinator || (Topology == Topology.Mesh && _roles[node] == Role.Router);
}
