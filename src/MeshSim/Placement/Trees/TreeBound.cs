namespace MeshSim.Placement.Trees;

/// <summary>What one way to each device, everything as it is, costs at least: no more than anything else that is asked costs.</summary>
internal static class TreeBound
{
    // Where each outlet hears dozens there are tens of thousands of arcs, and the relaxed masters over them took 53 s without closing a
    // gap (measured); where it hears a few, as along corridors, some thousands are settled at once.
    private const int MostArcs = 10_000;

    /// <summary>Seeks the least costly tree of routes over the outlets.</summary>
    /// <param name="goal">The devices to reach.</param>
    /// <param name="costs">Per outlet what choosing it costs, 0 or more.</param>
    /// <param name="limit">The work to put in.</param>
    /// <returns>The outlets of the best tree and the bound; nothing and 0 where there are too many links to try.</returns>
    public static SearchResult Of(ReachGoal goal, int[] costs, WorkLimit limit)
    {
        RepeaterProblem problem = goal.Graph.Problem;
        RouteNetwork network = new(
            [.. Enumerable.Range(0, problem.NodeCount).Select(node => node < problem.DeviceCount ? 0 : costs[node - problem.DeviceCount])],
            [.. Enumerable.Range(0, problem.NodeCount).Select(node => problem.CanRelay(node) && !goal.Absent.Contains(node))],
            [.. Enumerable.Range(0, problem.NodeCount).Select(node => goal.Graph.Neighbours(node).ToArray())],
            problem.Coordinator,
            [.. goal.Devices],
            problem.HopLimit);
        if (network.ArcCount > MostArcs) return new(null, 0);
        SearchResult tree = new TreeSearch(network).Run(limit);
        return tree with { Outlets = tree.Outlets is { } sites ? [.. sites.Select(site => site - problem.DeviceCount)] : null };
    }
}
