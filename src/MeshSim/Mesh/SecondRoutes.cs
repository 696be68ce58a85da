using System.Collections.Immutable;
using MeshSim.Devices;

namespace MeshSim.Mesh;

/// <summary>The way that is left when everything on the first one fails at once.</summary>
internal static class SecondRoutes
{
    /// <summary>
    /// For each node the route of least expected transmissions, within the hop limit, that shares no relay with its first route;
    /// where that is a direct link, not that link. Found by taking those out and asking again, so it is exact.
    /// </summary>
    /// <param name="graph">The graph.</param>
    /// <param name="first">The first route of each node, or null.</param>
    public static ImmutableArray<Route?> Of(MeshGraph graph, ImmutableArray<Route?> first)
    {
        var second = new Route?[first.Length];
        var ofRelays = new Dictionary<string, ImmutableArray<Route?>>(StringComparer.Ordinal);
        for (int node = 0; node < first.Length; node++)
        {
            if (first[node] is not { } route) continue;
            if (route.Relays.IsEmpty)
            {
                int direct = node;
                second[node] = Routing.LeastEtx(graph, graph.HopLimit, (from, to) => from != direct || to != graph.Coordinator)[node];
                continue;
            }

            // Devices behind the same routers share the search.
            string key = string.Join('\n', route.Relays);
            if (!ofRelays.TryGetValue(key, out ImmutableArray<Route?> routes))
                ofRelays[key] = routes = Avoiding(graph, route.Relays);
            second[node] = routes[node];
        }

        return [.. second];
    }

    private static ImmutableArray<Route?> Avoiding(MeshGraph graph, ImmutableArray<DeviceId> relays)
    {
        HashSet<int> avoided = [.. relays.Select(relay => graph.Devices.IndexOf(relay))];
        return Routing.LeastEtx(graph, graph.HopLimit, (_, to) => !avoided.Contains(to));
    }
}
