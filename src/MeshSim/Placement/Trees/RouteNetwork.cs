namespace MeshSim.Placement.Trees;

/// <summary>
/// Nodes that hear each other, some of which must be paid for before they pass frames on, as arcs that lead away from the
/// coordinator. An arc into a site costs what the site costs: its <em>entry</em>. All other arcs are free.
/// </summary>
internal sealed class RouteNetwork
{
    private readonly int[] firstOut;
    private readonly int[] firstIn;
    private readonly int[] arcsIn;
    private readonly int[] tails;
    private readonly int[] heads;
    private readonly int[] costs;

    /// <summary>Sets the network up.</summary>
    /// <param name="costs">Per node what it costs; 0 for a node that is there anyway, more for a site.</param>
    /// <param name="relays">Per node whether it passes frames on, a site when it is paid for.</param>
    /// <param name="neighbours">Per node the nodes that it hears, and is heard by.</param>
    /// <param name="coordinator">Where all routes end; costs nothing.</param>
    /// <param name="devices">The nodes to reach; they cost nothing.</param>
    /// <param name="hopLimit">Most links in a row.</param>
    public RouteNetwork(int[] costs, bool[] relays, int[][] neighbours, int coordinator, int[] devices, int hopLimit)
    {
        this.costs = costs;
        Coordinator = coordinator;
        Devices = devices;
        HopLimit = hopLimit;
        HashSet<int> ends = [.. devices];
        (int Tail, int Head)[] arcs =
        [
            .. Enumerable.Range(0, costs.Length).Where(node => relays[node]).SelectMany(node => neighbours[node].Where(Leads).Select(next => (node, next))),
        ];
        tails = [.. arcs.Select(arc => arc.Tail)];
        heads = [.. arcs.Select(arc => arc.Head)];
        (firstOut, _) = Group(tails);
        (firstIn, arcsIn) = Group(heads);

        bool Leads(int next) => next != coordinator && (relays[next] || ends.Contains(next));
    }

    /// <summary>Where all routes end; arcs lead away from it.</summary>
    public int Coordinator { get; }

    /// <summary>The nodes to reach.</summary>
    public int[] Devices { get; }

    /// <summary>Most links in a row.</summary>
    public int HopLimit { get; }

    /// <summary>Number of nodes.</summary>
    public int NodeCount => costs.Length;

    /// <summary>Number of arcs; those that leave a node follow each other.</summary>
    public int ArcCount => tails.Length;

    /// <summary>The node that an arc leaves.</summary>
    public int Tail(int arc) => tails[arc];

    /// <summary>The node that an arc leads to.</summary>
    public int Head(int arc) => heads[arc];

    /// <summary>What the node costs; 0 when it is no site.</summary>
    public int NodeCost(int node) => costs[node];

    /// <summary>What going along an arc costs.</summary>
    public int Cost(int arc) => costs[heads[arc]];

    /// <summary>The first arc that leaves a node, and the one after the last.</summary>
    public (int First, int End) ArcsFrom(int node) => (firstOut[node], firstOut[node + 1]);

    /// <summary>The arcs that lead to a node.</summary>
    public ReadOnlySpan<int> ArcsTo(int node) => arcsIn.AsSpan(firstIn[node]..firstIn[node + 1]);

    /// <summary>Whether every device is reached within the hop limit over some sites.</summary>
    /// <param name="isChosen">Per node, whether it is one of the sites; nodes that cost nothing need not be marked.</param>
    public bool IsServedBy(bool[] isChosen)
    {
        bool[] isReached = ReachedOver(isChosen);
        return Array.TrueForAll(Devices, device => isReached[device]);
    }

    /// <summary>Per node whether it is reached within the hop limit over some sites, itself one of them or free of cost.</summary>
    /// <param name="isChosen">Per node, whether it is one of the sites; nodes that cost nothing need not be marked.</param>
    public bool[] ReachedOver(bool[] isChosen)
    {
        int[] hops = new int[NodeCount];
        bool[] isReached = new bool[NodeCount];
        Queue<int> queue = new([Coordinator]);
        isReached[Coordinator] = true;
        while (queue.TryDequeue(out int node) && hops[node] < HopLimit)
        {
            (int first, int end) = ArcsFrom(node);
            for (int arc = first; arc < end; arc++)
            {
                int next = heads[arc];
                if (isReached[next] || (costs[next] > 0 && !isChosen[next])) continue;
                isReached[next] = true;
                hops[next] = hops[node] + 1;
                queue.Enqueue(next);
            }
        }

        return isReached;
    }

    /// <summary>The arcs by the node that they belong to: where each node's begin, and all of them.</summary>
    private (int[] First, int[] Arcs) Group(int[] nodes)
    {
        int[] first = new int[NodeCount + 1];
        foreach (int node in nodes) first[node + 1]++;
        for (int node = 0; node < NodeCount; node++) first[node + 1] += first[node];
        int[] next = [.. first];
        int[] arcs = new int[nodes.Length];
        for (int arc = 0; arc < nodes.Length; arc++) arcs[next[nodes[arc]]++] = arc;
        return (first, arcs);
    }
}
