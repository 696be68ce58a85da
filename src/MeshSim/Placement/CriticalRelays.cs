namespace MeshSim.Placement;

/// <summary>
/// The relays that all shortest ways to a node pass. The loss of any other relay leaves the node as near as it was, so that
/// one search tells for all relays whose loss can matter.
/// </summary>
internal sealed class CriticalRelays
{
    private readonly ReachGraph graph;
    private readonly int[] last;
    private readonly int[] relays;
    private NodeSet passing = new(0);

    /// <summary>Makes room.</summary>
    /// <param name="graph">The links that count.</param>
    public CriticalRelays(ReachGraph graph)
    {
        this.graph = graph;
        Hops = new int[graph.Problem.NodeCount];
        last = new int[graph.Problem.NodeCount];
        relays = [.. Enumerable.Range(0, graph.Problem.NodeCount).Where(graph.Problem.CanRelay)];
    }

    /// <summary>The fewest links from the coordinator to each node.</summary>
    public int[] Hops { get; }

    /// <summary>Finds the shortest ways.</summary>
    /// <param name="present">The nodes that pass frames on.</param>
    public void Find(NodeSet present)
    {
        passing = present;
        graph.CountHops(graph.Problem.Coordinator, present, Hops);
        last[graph.Problem.Coordinator] = graph.Problem.Coordinator;
        foreach (int relay in relays.Where(relay => present.Contains(relay) && Hops[relay] is > 0 and < ReachGraph.Unreached).OrderBy(relay => Hops[relay]))
            last[relay] = LastBefore(relay);
    }

    /// <summary>The relays that all shortest ways to a node pass, the nearest to it first; the coordinator is not among them.</summary>
    public IEnumerable<int> On(int node)
    {
        for (int relay = LastBefore(node); relay != graph.Problem.Coordinator; relay = last[relay]) yield return relay;
    }

    /// <summary>The relays whose loss can matter to any of some nodes that are reached.</summary>
    public NodeSet OnAny(IEnumerable<int> reached)
    {
        NodeSet all = new(Hops.Length);
        foreach (int relay in reached.SelectMany(On)) all.Add(relay);
        return all;
    }

    /// <summary>The last node before a node that all shortest ways to it pass.</summary>
    private int LastBefore(int node)
    {
        int common = -1;
        foreach (int other in graph.Neighbours(node))
        {
            if (Hops[other] != Hops[node] - 1 || (Hops[other] > 0 && !passing.Contains(other))) continue;
            common = common < 0 ? other : Common(common, other);
            if (common == graph.Problem.Coordinator) break;
        }

        return common;
    }

    private int Common(int a, int b)
    {
        while (a != b)
        {
            if (Hops[a] >= Hops[b]) a = last[a];
            else b = last[b];
        }

        return a;
    }
}
