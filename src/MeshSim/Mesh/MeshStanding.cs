using System.Collections.Immutable;
using MeshSim.Devices;

namespace MeshSim.Mesh;

/// <summary>Who is reached how, and who has a way to spare: what an outage changes.</summary>
internal sealed class MeshStanding
{
    private readonly Dictionary<DeviceId, Route> routes = [];
    private readonly HashSet<DeviceId> single = [];

    /// <summary>The standing of every device of a graph.</summary>
    public MeshStanding(MeshGraph graph)
    {
        On = graph.Devices;
        Devices = [.. graph.Devices.Where((_, node) => node != graph.Coordinator)];
        ImmutableArray<Route?> best = Routing.LeastEtx(graph);
        var disjoint = new DisjointRoutes(graph);
        for (int node = 0; node < best.Length; node++)
        {
            if (best[node] is not { } route) continue;
            routes[graph.Devices[node]] = route;
            if (disjoint.Count(node, atMost: 2) == 1) single.Add(graph.Devices[node]);
        }
    }

    /// <summary>All that have power.</summary>
    public ImmutableArray<DeviceId> On { get; }

    /// <summary>The devices that have power, the coordinator excepted, in the home's order.</summary>
    public ImmutableArray<DeviceId> Devices { get; }

    /// <summary>The best route of a device; null when it has none, or no power.</summary>
    public Route? RouteOf(DeviceId device) => routes.GetValueOrDefault(device);

    /// <summary>Whether a device is reached.</summary>
    public bool Reaches(DeviceId device) => routes.ContainsKey(device);

    /// <summary>Whether a device is reached, and any two of its routes share a router.</summary>
    public bool HasOneWay(DeviceId device) => single.Contains(device);
}
