using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Quantities;

namespace MeshSim.Mesh;

/// <summary>Ways from each device to the coordinator.</summary>
public static class Routing
{
    /// <summary>How every device but the coordinator reaches it, in the graph's order.</summary>
    public static ImmutableArray<DeviceReach> ReachOf(MeshGraph graph)
    {
        ImmutableArray<Route?> routes = LeastEtx(graph);
        var disjoint = new DisjointRoutes(graph);
        return
        [
            .. from node in Enumerable.Range(0, graph.Devices.Length)
               where node != graph.Coordinator
               select new DeviceReach
               {
                   Device = graph.Devices[node],
                   Route = routes[node],
                   DisjointRoutes = disjoint.Count(node),
                   NearestLink = routes[node] is null ? NearestLink(graph, node, routes) : null,
               },
        ];
    }

    /// <summary>
    /// For each node the route of least expected transmissions with at most the graph's hop limit of links; null where there is
    /// none. Of equal routes the one with fewer hops, then the one whose relays have the lower ids, compared from the device on.
    /// </summary>
    /// <remarks>
    /// Bellman's recursion in layers: the best route with at most h links goes over a neighbour's best route with at most h − 1.
    /// Every link costs at least one transmission, so no best route visits a node twice.
    /// </remarks>
    public static ImmutableArray<Route?> LeastEtx(MeshGraph graph)
    {
        int count = graph.Devices.Length;
        var routes = new Route?[count];
        if (graph.Coordinator < 0) return [.. routes];

        int layers = Math.Min(graph.HopLimit, count - 1);
        var best = new Step?[layers + 1][];
        best[0] = new Step?[count];
        best[0][graph.Coordinator] = new Step(0, 0, null, -1);
        for (int layer = 1; layer <= layers; layer++)
            best[layer] = Extend(graph, best[layer - 1]);

        for (int node = 0; node < count; node++)
            if (node != graph.Coordinator && best[layers][node] is not null) routes[node] = Follow(graph, best, node);
        return [.. routes];
    }

    private static Step?[] Extend(MeshGraph graph, Step?[] shorter)
    {
        var steps = new Step?[shorter.Length];
        for (int node = 0; node < shorter.Length; node++)
            steps[node] = node == graph.Coordinator ? shorter[node] : BestStep(graph, shorter, node);
        return steps;
    }

    private static Step? BestStep(MeshGraph graph, Step?[] shorter, int node)
    {
        Step? best = null;

        // Neighbours come by id, and only a better step replaces one found before: the lower id wins a tie.
        foreach ((int next, Link link) in graph.UsableLinks(node))
        {
            if (!graph.Relays(next) || shorter[next] is not { } rest) continue;
            var step = new Step(link.Etx + rest.Etx, rest.Hops + 1, link, next);
            if (best is null || step.Etx < best.Etx || (step.Etx == best.Etx && step.Hops < best.Hops)) best = step;
        }

        return best;
    }

    private static Route Follow(MeshGraph graph, Step?[][] best, int start)
    {
        var path = ImmutableArray.CreateBuilder<DeviceId>();
        var weakest = new Decibels(double.PositiveInfinity);
        double delivery = 1;
        int node = start;
        for (int layer = best.Length - 1; best[layer][node] is { Link: { } link, Next: int next }; layer--)
        {
            path.Add(graph.Devices[node]);
            weakest = Decibels.Min(weakest, link.Margin);
            delivery *= link.DeliveryFrom(graph.Devices[node]);
            node = next;
        }

        path.Add(graph.Devices[node]);
        return new Route { Path = path.ToImmutable(), Etx = best[^1][start]!.Etx, WeakestMargin = weakest, Delivery = delivery };
    }

    private static Link? NearestLink(MeshGraph graph, int node, ImmutableArray<Route?> routes)
    {
        if (graph.Coordinator < 0) return null;

        DeviceId device = graph.Devices[node];
        var relays = Enumerable.Range(0, graph.Devices.Length)
            .Where(other => graph.Relays(other) && (other == graph.Coordinator || routes[other] is not null))
            .Select(other => graph.Devices[other])
            .ToHashSet();
        return graph.Links
            .Where(link => (link.From == device || link.To == device) && relays.Contains(link.Other(device)))
            .OrderByDescending(link => link.Margin)
            .ThenBy(link => link.Other(device))
            .FirstOrDefault();
    }

    /// <summary>The first link of a best route and what the whole route costs.</summary>
    private sealed record Step(double Etx, int Hops, Link? Link, int Next);
}
