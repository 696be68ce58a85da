using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>Devices that must be reached over links of at least some margin, and what keeps a chosen set from that.</summary>
internal sealed class ReachGoal
{
    private readonly CutFinder finder;
    private readonly int[] hops;
    private readonly Dictionary<int, int[]> outletsByDevice = [];
    private readonly Dictionary<int, int[]> outletsFromCoordinator = [];

    /// <summary>Sets the goal.</summary>
    /// <param name="graph">The links that count.</param>
    /// <param name="devices">The devices to reach; each can be reached when every outlet is chosen.</param>
    public ReachGoal(ReachGraph graph, IEnumerable<int> devices)
    {
        Graph = graph;
        finder = new CutFinder(graph);
        hops = new int[graph.Problem.NodeCount];
        Devices = HardestOf(graph, [.. devices]);
        Prepare();
    }

    /// <summary>The links that count.</summary>
    public ReachGraph Graph { get; }

    /// <summary>The devices to reach, without those that are reached whenever another one is.</summary>
    public ImmutableArray<int> Devices { get; }

    /// <summary>Whether every device is reached.</summary>
    public bool IsMet(NodeSet passing)
    {
        Graph.CountHops(Graph.Problem.Coordinator, passing, hops);
        foreach (int device in Devices)
            if (hops[device] > Graph.Problem.HopLimit) return false;
        return true;
    }

    /// <summary>
    /// Cuts that a chosen set misses: for each device out of reach a series of cuts that share no outlet, once beginning beside
    /// the device and once beside the coordinator.
    /// </summary>
    /// <param name="chosen">The chosen outlets with the devices that pass frames on.</param>
    public IEnumerable<int[]> CutsMissedBy(NodeSet chosen)
    {
        foreach (int device in Devices)
        {
            foreach (int[] cut in DisjointCuts(device, chosen.Copy(), outletsFromCoordinator[device])) yield return cut;
            foreach (int[] cut in DisjointCuts(device, chosen.Copy(), outletsByDevice[device])) yield return cut;
        }
    }

    /// <summary>
    /// Cuts that shares of outlets miss: growing by the largest share first leaves a cut of small shares, and one whose shares
    /// sum to less than one speaks against them.
    /// </summary>
    /// <param name="shares">Per outlet, how much of it is chosen, 0 to 1.</param>
    public IEnumerable<int[]> CutsMissedBy(double[] shares)
    {
        foreach (int device in Devices)
        {
            int[] order = [.. outletsFromCoordinator[device].OrderByDescending(outlet => shares[outlet])];
            if (finder.Grow(device, Graph.NothingChosen(), order) is { } cut) yield return cut;
        }
    }

    /// <summary>The outlets of which each alone would bring the first device within reach that is out of it.</summary>
    public IReadOnlyList<int> OutletsThatConnectFirst(NodeSet passing)
    {
        RepeaterProblem problem = Graph.Problem;
        Graph.CountHops(problem.Coordinator, passing, hops);
        foreach (int device in Devices)
        {
            if (hops[device] <= problem.HopLimit) continue;
            int[] fromDevice = new int[problem.NodeCount];
            Graph.CountHops(device, passing, fromDevice);
            return [.. outletsByDevice[device].Where(Connects)];

            bool Connects(int outlet) => hops[problem.NodeOf(outlet)] + fromDevice[problem.NodeOf(outlet)] <= problem.HopLimit;
        }

        return [];
    }

    private IEnumerable<int[]> DisjointCuts(int device, NodeSet passing, int[] order)
    {
        while (finder.Grow(device, passing, order) is { } cut)
        {
            yield return cut;
            foreach (int outlet in cut) passing.Add(Graph.Problem.NodeOf(outlet));
        }
    }

    /// <summary>Per device the outlets on some way to it that is short enough, by hops from either end.</summary>
    private void Prepare()
    {
        RepeaterProblem problem = Graph.Problem;
        NodeSet all = Graph.EverythingChosen();
        int[] fromDevice = new int[problem.NodeCount];
        Graph.CountHops(problem.Coordinator, all, hops);
        foreach (int device in Devices)
        {
            Graph.CountHops(device, all, fromDevice);
            int[] useful = [.. Enumerable.Range(0, problem.OutletCount).Where(outlet => IsUseful(problem.NodeOf(outlet)))];
            outletsByDevice.Add(device, [.. useful.OrderBy(outlet => fromDevice[problem.NodeOf(outlet)])]);
            outletsFromCoordinator.Add(device, [.. useful.OrderBy(outlet => hops[problem.NodeOf(outlet)])]);
        }

        bool IsUseful(int node) => hops[node] + fromDevice[node] <= problem.HopLimit;
    }

    /// <summary>
    /// Leaves out each device that hears everything that another one still in the list hears: it is reached whenever that one
    /// is. One after the other, so that two that hear the same do not both go.
    /// </summary>
    private static ImmutableArray<int> HardestOf(ReachGraph graph, ImmutableArray<int> devices)
    {
        int[] withNothing = new int[graph.Problem.NodeCount];
        graph.CountHops(graph.Problem.Coordinator, graph.NothingChosen(), withNothing);
        List<int> left = [.. devices.Where(device => withNothing[device] > graph.Problem.HopLimit)];
        for (int i = left.Count - 1; i >= 0; i--)
        {
            int device = left[i];
            if (left.Exists(other => other != device && graph.HearsAllOf(device, other))) left.RemoveAt(i);
        }

        return [.. left];
    }
}
