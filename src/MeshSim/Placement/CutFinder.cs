namespace MeshSim.Placement;

/// <summary>
/// Finds sets of outlets of which at least one must be chosen. A chosen set that leaves a device out of reach is grown, outlet
/// by outlet, for as long as the device stays out of reach. What is left over in the end cannot all be done without, because
/// choosing more never cuts anybody off; and nothing can be left away from it.
/// </summary>
internal sealed class CutFinder
{
    private readonly ReachGraph graph;
    private readonly int[] fromCoordinator;
    private readonly int[] fromDevice;
    private readonly int[] queue;
    private readonly bool[] isQueued;

    public CutFinder(ReachGraph graph)
    {
        this.graph = graph;
        int nodes = graph.Problem.NodeCount;
        fromCoordinator = new int[nodes];
        fromDevice = new int[nodes];
        queue = new int[nodes];
        isQueued = new bool[nodes];
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
        graph.CountHops(graph.Problem.Coordinator, passing, fromCoordinator);
        if (fromCoordinator[device] <= graph.Problem.HopLimit) return null;
        graph.CountHops(device, passing, fromDevice);
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
        start.FromCoordinator.CopyTo(fromCoordinator);
        start.FromDevice(device).CopyTo(fromDevice);
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
            if (fromCoordinator[node] + fromDevice[node] <= problem.HopLimit)
            {
                cut.Add(outlet);
                if (!shares.IsEmpty && (sum += shares[outlet]) >= need) return null;
                continue;
            }

            passing.Add(node);
            Spread(node, passing, fromCoordinator);
            Spread(node, passing, fromDevice);
        }

        cut.Sort();
        return [.. cut];
    }

    /// <summary>Passes on what a node that has begun to relay changes.</summary>
    private void Spread(int start, NodeSet passing, int[] hops)
    {
        // Each node waits at most once, so the ring of all nodes never overruns.
        int head = 0, count = 1;
        queue[0] = start;
        isQueued[start] = true;
        while (count > 0)
        {
            int node = queue[head];
            head = (head + 1) % queue.Length;
            count--;
            isQueued[node] = false;
            int next = hops[node] + 1;
            foreach (int other in graph.Neighbours(node))
            {
                if (hops[other] <= next) continue;
                hops[other] = next;
                if (!passing.Contains(other) || isQueued[other]) continue;
                queue[(head + count) % queue.Length] = other;
                isQueued[other] = true;
                count++;
            }
        }
    }
}
