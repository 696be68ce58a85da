namespace MeshSim.Placement;

/// <summary>The outlets on some way to a device that is short enough, found when first asked for.</summary>
internal sealed class UsefulOutlets
{
    private readonly ReachGraph graph;
    private readonly NodeSet absent;
    private readonly Lazy<int[]> hopsWithAll;
    private readonly Lazy<int[]> fromCoordinator;
    private readonly Dictionary<int, (int[] ByDevice, int[] FromCoordinator, bool[] Is)> known = [];

    /// <summary>Nothing is known yet.</summary>
    /// <param name="graph">The links that count.</param>
    /// <param name="absent">Nodes that are off.</param>
    public UsefulOutlets(ReachGraph graph, NodeSet absent)
    {
        this.graph = graph;
        this.absent = absent;
        hopsWithAll = new(() => Hops(graph.Problem.Coordinator, graph.EverythingChosen().Without(absent)));
        fromCoordinator = new(() => [.. Enumerable.Range(0, graph.Problem.OutletCount).OrderBy(outlet => hopsWithAll.Value[graph.Problem.NodeOf(outlet)])]);
    }

    /// <summary>The useful outlets by hops from the device and by hops from the coordinator.</summary>
    public (int[] ByDevice, int[] FromCoordinator) To(int device)
    {
        (int[] byDevice, int[] fromCoordinator, _) = Of(device);
        return (byDevice, fromCoordinator);
    }

    /// <summary>The useful outlets in an order of all outlets.</summary>
    public int[] InOrder(int device, int[] order)
    {
        bool[] isUseful = Of(device).Is;
        return Array.FindAll(order, outlet => isUseful[outlet]);
    }

    /// <summary>The outlets of which each alone connects a device.</summary>
    /// <param name="device">A device out of reach.</param>
    /// <param name="present">The nodes that pass frames on.</param>
    /// <param name="hops">The fewest links from the coordinator to each node over these.</param>
    public IReadOnlyList<int> ThatConnect(int device, NodeSet present, int[] hops)
    {
        int[] fromDevice = Hops(device, present);
        return [.. Of(device).ByDevice.Where(Connects)];

        bool Connects(int outlet) => hops[graph.Problem.NodeOf(outlet)] + fromDevice[graph.Problem.NodeOf(outlet)] <= graph.Problem.HopLimit;
    }

    private (int[] ByDevice, int[] FromCoordinator, bool[] Is) Of(int device)
    {
        if (known.TryGetValue(device, out (int[], int[], bool[]) found)) return found;

        RepeaterProblem problem = graph.Problem;
        int[] fromDevice = Hops(device, graph.EverythingChosen().Without(absent));
        bool[] isUseful = [.. Enumerable.Range(0, problem.OutletCount).Select(outlet => IsUseful(problem.NodeOf(outlet)))];
        int[] useful = [.. Enumerable.Range(0, problem.OutletCount).Where(outlet => isUseful[outlet])];
        return known[device] =
        (
            [.. useful.OrderBy(outlet => fromDevice[problem.NodeOf(outlet)])],
            Array.FindAll(fromCoordinator.Value, outlet => isUseful[outlet]),
            isUseful);

        bool IsUseful(int node) => !absent.Contains(node) && hopsWithAll.Value[node] + fromDevice[node] <= problem.HopLimit;
    }

    private int[] Hops(int source, NodeSet passing)
    {
        int[] hops = new int[graph.Problem.NodeCount];
        graph.CountHops(source, passing, hops);
        return hops;
    }
}
