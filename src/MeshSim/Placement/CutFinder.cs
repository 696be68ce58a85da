namespace MeshSim.Placement;

/// <summary>
/// Finds sets of outlets of which at least one must be chosen. A chosen set that leaves a device out of reach is grown, outlet
/// by outlet, for as long as the device stays out of reach. What is left over in the end cannot all be done without, because
/// choosing more never cuts anybody off; and nothing can be left away from it.
/// </summary>
internal sealed class CutFinder
{
    private readonly ReachGraph graph;
    private readonly GrowingHops fromCoordinator;
    private readonly GrowingHops fromDevice;
    private readonly int[] hops;

    public CutFinder(ReachGraph graph)
    {
        this.graph = graph;
        fromCoordinator = new(graph);
        fromDevice = new(graph);
        hops = new int[graph.Problem.NodeCount];
    }

    /// <summary>
    /// The cut that is left when outlets are added in a given order. <paramref name="passing"/> is grown in place.
    /// </summary>
    /// <param name="device">A device.</param>
    /// <param name="passing">The nodes that pass frames on.</param>
    /// <param name="order">
    /// The outlets that can matter to the device, in the order to try; the earlier stay out of the cut if they can.
    /// </param>
    /// <returns>The outlets of the cut, lowest first, or null when the device is reached.</returns>
    public int[]? Grow(int device, NodeSet passing, ReadOnlySpan<int> order)
    {
        graph.CountHops(graph.Problem.Coordinator, passing, hops);
        if (hops[device] <= graph.Problem.HopLimit) return null;
        fromCoordinator.Begin(hops);
        graph.CountHops(device, passing, hops);
        fromDevice.Begin(hops);
        return Grow(passing, order, [], double.PositiveInfinity);
    }

    /// <summary>The same for shares of outlets, nothing chosen: null also when the cut that is coming cannot be missed by them.</summary>
    /// <param name="device">A device.</param>
    /// <param name="start">Where to begin.</param>
    /// <param name="order">The outlets that can matter to the device, the largest share first.</param>
    /// <param name="shares">Per outlet how much of it is chosen.</param>
    /// <param name="need">Shares that sum to this do not miss the cut.</param>
    public int[]? Grow(int device, StartHops start, ReadOnlySpan<int> order, ReadOnlySpan<double> shares, double need)
    {
        if (start.FromCoordinator[device] <= graph.Problem.HopLimit) return null;
        fromCoordinator.Begin(start.FromCoordinator);
        fromDevice.Begin(start.FromDevice(device));
        return Grow(start.Passing(), order, shares, need);
    }

    /// <summary>A series of cuts that share no outlet: after each one all of it is chosen.</summary>
    /// <param name="device">A device.</param>
    /// <param name="passing">The nodes that pass frames on; grown in place.</param>
    /// <param name="order">The outlets that can matter to the device, in the order to try.</param>
    public IEnumerable<int[]> Disjoint(int device, NodeSet passing, int[] order)
    {
        while (Grow(device, passing, order) is { } cut)
        {
            yield return cut;
            foreach (int outlet in cut) passing.Add(graph.Problem.NodeOf(outlet));
        }
    }

    private int[]? Grow(NodeSet passing, ReadOnlySpan<int> order, ReadOnlySpan<double> shares, double need)
    {
        RepeaterProblem problem = graph.Problem;
        List<int> cut = [];
        double sum = 0;
        foreach (int outlet in order)
        {
            int node = problem.NodeOf(outlet);
            if (passing.Contains(node)) continue;
            if (fromCoordinator.Hops[node] + fromDevice.Hops[node] <= problem.HopLimit)
            {
                cut.Add(outlet);
                if (!shares.IsEmpty && (sum += shares[outlet]) >= need) return null;
                continue;
            }

            passing.Add(node);
            fromCoordinator.Spread(node, passing);
            fromDevice.Spread(node, passing);
        }

        cut.Sort();
        return [.. cut];
    }
}
