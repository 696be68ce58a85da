using System.Collections.Immutable;
using MeshSim.Devices;

namespace MeshSim.Mesh;

/// <summary>
/// Who cannot do without whom. A device needs a router when, with that router gone, it has no route within the hop limit.
/// Without a hop limit these routers are the dominators of the device, seen from the coordinator; a hop limit adds those whose
/// only replacements are too long a way round.
/// </summary>
public static class Dependence
{
    /// <summary>For each node the relays that it needs, the nearest to the coordinator first, then by id. Empty for nodes out of reach.</summary>
    public static ImmutableArray<ImmutableArray<DeviceId>> Needs(MeshGraph graph)
    {
        int[] hops = HopCounts.Of(graph);
        var needs = new List<int>[hops.Length];
        for (int node = 0; node < needs.Length; node++)
            needs[node] = [];
        foreach (int relay in RelaysReached(graph, hops))
            foreach (int node in CutOff(graph, hops, relay))
                needs[node].Add(relay);
        return [.. needs.Select(list => list.OrderBy(relay => hops[relay]).Select(relay => graph.Devices[relay]).ToImmutableArray())];
    }

    /// <summary>The devices that need each relay, in the graph's order; relays that nobody needs have no entry.</summary>
    public static ImmutableDictionary<DeviceId, ImmutableArray<DeviceId>> NeededBy(MeshGraph graph)
    {
        int[] hops = HopCounts.Of(graph);
        return RelaysReached(graph, hops)
            .Select(relay => (Relay: graph.Devices[relay], Devices: CutOff(graph, hops, relay).Select(node => graph.Devices[node]).ToImmutableArray()))
            .Where(entry => !entry.Devices.IsEmpty)
            .ToImmutableDictionary(entry => entry.Relay, entry => entry.Devices);
    }

    private static IEnumerable<int> RelaysReached(MeshGraph graph, int[] hops) =>
        Enumerable.Range(0, hops.Length)
            .Where(node => node != graph.Coordinator && graph.Relays(node) && hops[node] != HopCounts.Unreached)
            .OrderBy(node => graph.Devices[node]);

    private static IEnumerable<int> CutOff(MeshGraph graph, int[] hops, int relay)
    {
        int[] left = HopCounts.Of(graph, without: relay);
        return Enumerable.Range(0, hops.Length)
            .Where(node => node != relay && hops[node] != HopCounts.Unreached && left[node] == HopCounts.Unreached);
    }
}
