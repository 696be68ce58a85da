using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>Devices that must be reached over links of at least some margin, and what keeps a chosen set from that.</summary>
internal sealed class ReachGoal
{
    private readonly CutFinder finder;
    private readonly int[] hops;
    private readonly NodeSet absent;
    private readonly int? lostOutlet;
    private readonly Lazy<int[]> hopsWithAll;
    private readonly Dictionary<int, (int[] ByDevice, int[] FromCoordinator)> usefulTo = [];

    /// <summary>Sets the goal.</summary>
    /// <param name="graph">The links that count.</param>
    /// <param name="demand">In which case.</param>
    /// <param name="devices">The devices to reach, some of the demand's; each can be reached when every outlet is chosen.</param>
    public ReachGoal(ReachGraph graph, Demand demand, IEnumerable<int> devices)
    {
        Graph = graph;
        absent = demand.Absent;
        lostOutlet = demand.LostOutlet;
        finder = new CutFinder(graph);
        hops = new int[graph.Problem.NodeCount];
        hopsWithAll = new(() => demand.Hops(graph, graph.EverythingChosen()));
        Devices = HardestOf(graph, demand, [.. devices]);
    }

    /// <summary>The links that count.</summary>
    public ReachGraph Graph { get; }

    /// <summary>The devices to reach, without those that are reached whenever another one is.</summary>
    public ImmutableArray<int> Devices { get; }

    /// <summary>Whether the goal is to do without an outlet.</summary>
    public bool LosesOutlet => lostOutlet is not null;

    /// <summary>
    /// Whether every device is reached. The loss of an outlet that is not chosen changes nothing: whether the goal without that
    /// loss is met is not asked again.
    /// </summary>
    public bool IsMet(NodeSet passing)
    {
        if (lostOutlet is { } lost && !passing.Contains(lost)) return true;
        Graph.CountHops(Graph.Problem.Coordinator, passing.Without(absent), hops);
        foreach (int device in Devices)
            if (hops[device] > Graph.Problem.HopLimit) return false;
        return true;
    }

    /// <summary>Whether an outlet can stand in for another one: it has power and hears whatever the other hears.</summary>
    public bool CanReplace(int outlet, int other)
    {
        int node = Graph.Problem.NodeOf(outlet), otherNode = Graph.Problem.NodeOf(other);
        return Graph.HearsAllOf(node, otherNode) && (!absent.Contains(node) || absent.Contains(otherNode));
    }

    /// <summary>
    /// Cuts that a chosen set misses: for each device out of reach a series of cuts that share no outlet, once beginning beside
    /// the device and once beside the coordinator.
    /// </summary>
    /// <param name="chosen">The chosen outlets with the devices that pass frames on.</param>
    public IEnumerable<int[]> CutsMissedBy(NodeSet chosen)
    {
        if (lostOutlet is { } lost && !chosen.Contains(lost)) yield break;
        foreach (int device in Devices)
        {
            (int[] byDevice, int[] fromCoordinator) = UsefulTo(device);
            foreach (int[] cut in DisjointCuts(device, chosen.Without(absent), fromCoordinator)) yield return cut;
            foreach (int[] cut in DisjointCuts(device, chosen.Without(absent), byDevice)) yield return cut;
        }
    }

    /// <summary>
    /// Cuts that shares of outlets miss: growing by the largest share first leaves a cut of small shares, and one whose shares
    /// sum to less than one speaks against them.
    /// </summary>
    /// <param name="shares">Per outlet, how much of it is chosen, 0 to 1.</param>
    public IEnumerable<int[]> CutsMissedBy(double[] shares)
    {
        // With nothing of the lost outlet chosen, the cuts of the goal without the loss say as much.
        if (lostOutlet is { } lost && shares[lost - Graph.Problem.DeviceCount] <= 0) yield break;
        foreach (int device in Devices)
        {
            int[] order = [.. UsefulTo(device).FromCoordinator.OrderByDescending(outlet => shares[outlet])];
            if (finder.Grow(device, Graph.NothingChosen().Without(absent), order) is { } cut) yield return cut;
        }
    }

    /// <summary>The outlets of which each alone would bring the first device within reach that is out of it.</summary>
    public IReadOnlyList<int> OutletsThatConnectFirst(NodeSet passing)
    {
        RepeaterProblem problem = Graph.Problem;
        NodeSet present = passing.Without(absent);
        Graph.CountHops(problem.Coordinator, present, hops);
        foreach (int device in Devices)
        {
            if (hops[device] <= problem.HopLimit) continue;
            int[] fromDevice = new int[problem.NodeCount];
            Graph.CountHops(device, present, fromDevice);
            return [.. UsefulTo(device).ByDevice.Where(Connects)];

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

    /// <summary>The outlets with power on some way to a device that is short enough, by hops from either end. Found when first asked for.</summary>
    private (int[] ByDevice, int[] FromCoordinator) UsefulTo(int device)
    {
        if (usefulTo.TryGetValue(device, out (int[], int[]) known)) return known;

        RepeaterProblem problem = Graph.Problem;
        int[] fromDevice = new int[problem.NodeCount];
        Graph.CountHops(device, Graph.EverythingChosen().Without(absent), fromDevice);
        int[] useful = [.. Enumerable.Range(0, problem.OutletCount).Where(outlet => IsUseful(problem.NodeOf(outlet)))];
        return usefulTo[device] =
        (
            [.. useful.OrderBy(outlet => fromDevice[problem.NodeOf(outlet)])],
            [.. useful.OrderBy(outlet => hopsWithAll.Value[problem.NodeOf(outlet)])]);

        bool IsUseful(int node) => !absent.Contains(node) && hopsWithAll.Value[node] + fromDevice[node] <= problem.HopLimit;
    }

    /// <summary>
    /// Leaves out each device that hears everything that another one still in the list hears: it is reached whenever that one
    /// is. One after the other, so that two that hear the same do not both go.
    /// </summary>
    private static ImmutableArray<int> HardestOf(ReachGraph graph, Demand demand, ImmutableArray<int> devices)
    {
        int[] withNothing = demand.Hops(graph, graph.NothingChosen());
        List<int> left = [.. devices.Where(device => withNothing[device] > graph.Problem.HopLimit)];
        for (int i = left.Count - 1; i >= 0; i--)
        {
            int device = left[i];
            if (left.Exists(other => other != device && graph.HearsAllOf(device, other))) left.RemoveAt(i);
        }

        return [.. left];
    }
}
