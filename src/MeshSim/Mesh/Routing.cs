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
        ImmutableArray<Route?> seconds = SecondRoutes.Of(graph, routes);
        ImmutableArray<ImmutableArray<ParentChoice>> parents = ParentChoices.Of(graph);
        ImmutableArray<ImmutableArray<DeviceId>> needs = Dependence.Needs(graph);
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
                   SecondRoute = seconds[node],
                   Parents = parents[node],
                   Needs = needs[node],
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
    public static ImmutableArray<Route?> LeastEtx(MeshGraph graph) => LeastEtx(graph, graph.HopLimit, static (_, _) => true);

    /// <summary>The same with another hop limit and over some links alone.</summary>
    /// <param name="graph">The graph.</param>
    /// <param name="hopLimit">Most links in a row; 0 or more.</param>
    /// <param name="isOpen">Whether a frame may go from one node to the next on its way to the coordinator.</param>
    internal static ImmutableArray<Route?> LeastEtx(MeshGraph graph, int hopLimit, Func<int, int, bool> isOpen)
    {
        int count = graph.Devices.Length;
        var routes = new Route?[count];
        if (graph.Coordinator < 0) return [.. routes];

        var nearest = new Step?[count];
        nearest[graph.Coordinator] = new Step(0, 0, null, -1);
        List<Step?[]> best = [nearest];
        while (best.Count <= Math.Min(hopLimit, count - 1))
        {
            Step?[] longer = Extend(graph, best[^1], isOpen);
            if (longer.Zip(best[^1]).All(pair => pair.First?.Etx == pair.Second?.Etx && pair.First?.Hops == pair.Second?.Hops && pair.First?.Next == pair.Second?.Next)) break;
            best.Add(longer);
        }

        for (int node = 0; node < count; node++)
            if (node != graph.Coordinator && best[^1][node] is not null) routes[node] = Follow(graph, best, node);
        return [.. routes];
    }

    private static Step?[] Extend(MeshGraph graph, Step?[] shorter, Func<int, int, bool> isOpen)
    {
        var steps = new Step?[shorter.Length];
        for (int node = 0; node < shorter.Length; node++)
            steps[node] = node == graph.Coordinator ? shorter[node] : BestStep(graph, shorter, node, isOpen);
        return steps;
    }

    private static Step? BestStep(MeshGraph graph, Step?[] shorter, int node, Func<int, int, bool> isOpen)
    {
        Step? best = null;

        // Neighbours come by id, and only a better step replaces one found before: the lower id wins a tie.
        foreach ((int next, Link link) in graph.UsableLinks(node))
        {
            if (!graph.Relays(next) || shorter[next] is not { } rest || !isOpen(node, next)) continue;
            var step = new Step(link.Etx + rest.Etx, rest.Hops + 1, link, next);
            if (best is null || step.Etx < best.Etx || (step.Etx == best.Etx && step.Hops < best.Hops)) best = step;
        }

        return best;
    }

    private static Route Follow(MeshGraph graph, List<Step?[]> best, int start)
    {
        var path = ImmutableArray.CreateBuilder<DeviceId>();
        var weakest = new Decibels(double.PositiveInfinity);
        double delivery = 1;
        int node = start;
        for (int layer = best.Count - 1; best[layer][node] is { Link: { } link, Next: int next }; layer--)
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
