using System.Collections.Immutable;

namespace MeshSim.Mesh;

/// <summary>
/// Whom a device that relays nothing keeps as its parent. A battery device speaks to one relay alone and changes it only when
/// that one falls silent, so the second choice and its margin say what the change would be worth.
/// </summary>
internal static class ParentChoices
{
    private const int Shown = 2;

    /// <summary>
    /// For each node that relays nothing its choices, by expected transmissions to the coordinator, then hops, then id: relays to
    /// which it has a usable link and which have a route with a link to spare in the hop limit. Empty for relays.
    /// </summary>
    public static ImmutableArray<ImmutableArray<ParentChoice>> Of(MeshGraph graph)
    {
        ImmutableArray<Route?> onward = Routing.LeastEtx(graph, graph.HopLimit - 1, static (_, _) => true);
        return [.. Enumerable.Range(0, graph.Devices.Length).Select(node => graph.Relays(node) ? [] : Of(graph, node, onward))];
    }

    private static ImmutableArray<ParentChoice> Of(MeshGraph graph, int node, ImmutableArray<Route?> onward) =>
    [
        .. (from entry in graph.UsableLinks(node)
            where graph.Relays(entry.Neighbour)
            let isCoordinator = entry.Neighbour == graph.Coordinator
            let rest = onward[entry.Neighbour]
            where isCoordinator || rest is not null
            let etx = entry.Link.Etx + (isCoordinator ? 0 : rest.Etx)
            let hops = 1 + (isCoordinator ? 0 : rest.Hops)
            orderby etx, hops, graph.Devices[entry.Neighbour]
            select new ParentChoice(graph.Devices[entry.Neighbour], entry.Link.Margin, etx, hops)).Take(Shown),
    ];
}
