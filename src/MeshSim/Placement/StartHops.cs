namespace MeshSim.Placement;

/// <summary>
/// The hops with which the search for cuts begins when nothing is chosen: the same each time, so they are counted once. Without them two
/// searches stand at the beginning of each attempt, most of which end after a few outlets.
/// </summary>
internal sealed class StartHops
{
    private readonly ReachGraph graph;
    private readonly NodeSet passing;
    private readonly Lazy<int[]> fromCoordinator;
    private readonly Dictionary<int, int[]> fromDevice = [];

    /// <summary>Nothing is counted yet.</summary>
    /// <param name="graph">The links that count.</param>
    /// <param name="passing">The nodes that pass frames on; not changed.</param>
    public StartHops(ReachGraph graph, NodeSet passing)
    {
        (this.graph, this.passing) = (graph, passing);
        fromCoordinator = new(() => Count(graph.Problem.Coordinator));
    }

    /// <summary>The nodes that pass frames on, to be grown.</summary>
    public NodeSet Passing() => passing.Copy();

    /// <summary>Fewest links from the coordinator to each node.</summary>
    public ReadOnlySpan<int> FromCoordinator => fromCoordinator.Value;

    /// <summary>Fewest links from a device to each node.</summary>
    public ReadOnlySpan<int> FromDevice(int device)
    {
        if (!fromDevice.TryGetValue(device, out int[]? hops)) fromDevice[device] = hops = Count(device);
        return hops;
    }

    private int[] Count(int source)
    {
        int[] hops = new int[graph.Problem.NodeCount];
        graph.CountHops(source, passing, hops);
        return hops;
    }
}
