using System.Collections.Immutable;
using MeshSim.Quantities;

namespace MeshSim.Placement.Concessions;

/// <summary>Devices that the same link keeps from what was asked in one case; nodes, not names.</summary>
/// <param name="Situation">The place of the situation among all; 0 is everyday.</param>
/// <param name="Lost">The router or outlet that is lost; null when none is.</param>
/// <param name="Devices">The devices.</param>
/// <param name="Link">The link that lacks least of those of which any one would do; null when no level at all leads to the devices.</param>
/// <param name="LinksThatWouldDo">How many such links there are.</param>
/// <param name="Hops">Links of the shortest way; null when there is none.</param>
internal sealed record FoundObstacle(
    int Situation, int? Lost, ImmutableArray<int> Devices, (int From, int To)? Link, int LinksThatWouldDo, int? Hops);

/// <summary>Finds what stands in the way of that which no choice of outlets can do.</summary>
internal static class ObstacleFinder
{
    /// <summary>The obstacles, in the order of the cases.</summary>
    /// <param name="situations">Everyday first.</param>
    /// <param name="unmet">What cannot be had.</param>
    public static IEnumerable<FoundObstacle> Find(ImmutableArray<Situation> situations, IEnumerable<UnmetDemand> unmet)
    {
        GraphsByMargin graphs = new();
        foreach (IGrouping<(int Situation, int? Lost), UnmetDemand> group in unmet.GroupBy(demand => (demand.Situation, demand.Lost)))
        {
            Demand demand = Demand.Of(situations[group.Key.Situation], group.Key.Situation, group.Key.Lost);
            foreach (FoundObstacle found in In(demand, graphs.Planned(demand), [.. group.Select(entry => entry.Device)])) yield return found;
        }
    }

    /// <summary>
    /// With how little margin all of it could be had: the least over its devices of the weakest link on their strongest route.
    /// </summary>
    /// <param name="situations">Everyday first.</param>
    /// <param name="unmet">What cannot be had.</param>
    /// <returns>The greatest margin at which all of it can be had; minus infinity when nothing helps.</returns>
    public static Decibels LeastMargin(ImmutableArray<Situation> situations, IEnumerable<UnmetDemand> unmet)
    {
        Decibels least = situations[0].Problem.DesignMargin;
        foreach (IGrouping<(int Situation, int? Lost), UnmetDemand> group in unmet.GroupBy(demand => (demand.Situation, demand.Lost)))
        {
            Demand demand = Demand.Of(situations[group.Key.Situation], group.Key.Situation, group.Key.Lost);
            WidestRoutes routes = new(demand.Problem, Enumerable.Range(0, demand.Problem.OutletCount), demand.Absent);
            foreach (UnmetDemand entry in group) least = Decibels.Min(least, routes.MarginOf(entry.Device));
        }

        return least;
    }

    private static IEnumerable<FoundObstacle> In(Demand demand, ReachGraph graph, ImmutableArray<int> devices)
    {
        NodeSet passing = graph.EverythingChosen().Without(demand.Absent);
        int[] hops = demand.Hops(graph, passing);
        var ends = devices.ToDictionary(device => device, HopsFrom);
        foreach (var group in devices.GroupBy(device => ThatWouldDo(demand.Problem, passing, hops, [ends[device]]).Nearest))
        {
            int first = group.First();
            yield return new(
                demand.Situation,
                demand.Lost,
                [.. group],
                group.Key,
                ThatWouldDo(demand.Problem, passing, hops, [.. group.Select(device => ends[device])]).Count,
                hops[first] < ReachGraph.Unreached ? hops[first] : null);
        }

        int[] HopsFrom(int device)
        {
            int[] from = new int[demand.Problem.NodeCount];
            graph.CountHops(device, passing, from);
            for (int node = 0; node < from.Length; node++)
                if (node != device && !passing.Contains(node)) from[node] = ReachGraph.Unreached;
            return from;
        }
    }

    /// <summary>The links of which any one, if it counted, would bring all of some devices into reach: the one that lacks least, and how many.</summary>
    /// <param name="problem">Nodes and margins.</param>
    /// <param name="passing">The nodes that pass frames on.</param>
    /// <param name="hops">The fewest links from the coordinator to each node.</param>
    /// <param name="ends">Per device the fewest links from each node that could hand on to it.</param>
    private static ((int From, int To)? Nearest, int Count) ThatWouldDo(RepeaterProblem problem, NodeSet passing, int[] hops, int[][] ends)
    {
        (int From, int To)? nearest = null;
        double bestDb = double.NegativeInfinity;
        int count = 0;
        for (int from = 0; from < problem.NodeCount; from++)
        {
            if (!passing.Contains(from) || hops[from] >= problem.HopLimit) continue;
            for (int to = 0; to < problem.NodeCount; to++)
            {
                double marginDb = problem.Margin(from, to).Value;
                if (double.IsNegativeInfinity(marginDb) || !Array.TrueForAll(ends, end => hops[from] + 1 + end[to] <= problem.HopLimit)) continue;
                count++;
                if (marginDb > bestDb) (nearest, bestDb) = ((from, to), marginDb);
            }
        }

        return (nearest, count);
    }
}
