namespace MeshSim.Placement.Trees;

/// <summary>Trees of routes without a proof. Whatever they return reaches every device.</summary>
internal sealed class TreeBuilder
{
    private readonly RouteNetwork network;
    private readonly int[] sites;

    /// <summary>Prepares for a network.</summary>
    public TreeBuilder(RouteNetwork network)
    {
        this.network = network;
        sites = [.. Enumerable.Range(0, network.NodeCount).Where(node => network.NodeCost(node) > 0)];
    }

    /// <summary>
    /// Joins one device after the other, the nearest first, to the tree so far by its shortest way, then drops and exchanges sites as
    /// long as that saves something. H. Takahashi, A. Matsuyama, "An approximate solution for the Steiner problem in graphs",
    /// Mathematica Japonica 24 (1980), 573–577.
    /// </summary>
    /// <param name="isOpen">Per arc whether it may be used.</param>
    /// <param name="lengths">Per arc its length, 0 or more.</param>
    /// <returns>The nodes of the sites in order; null when a device cannot be reached, or only over too many links.</returns>
    public int[]? Build(bool[] isOpen, double[] lengths)
    {
        if (JoinNearest(isOpen, lengths) is not { } isInTree) return null;
        int[] chosen = [.. sites.Where(site => isInTree[site])];
        int cost = int.MaxValue;
        while (CostOf(chosen) < cost)
        {
            cost = CostOf(chosen);
            if (!network.IsServedBy(Marked(chosen))) return null;
            chosen = Exchange(chosen);
        }

        return chosen;
    }

    /// <summary>What sites cost together.</summary>
    public int CostOf(IEnumerable<int> chosen) => chosen.Sum(network.NodeCost);

    /// <summary>Gives up sites, the first first, as long as the rest still reaches every device.</summary>
    public int[] Thin(int[] order) => ChosenSets.Thin(order, stay => network.IsServedBy(Marked(stay)));

    /// <summary>
    /// Adds every site that joins two nodes of the tree and gives up as much as possible, the dearest first: among the same nodes
    /// the least costly tree.
    /// </summary>
    private int[] Exchange(int[] chosen)
    {
        bool[] isInTree = new bool[network.NodeCount];
        isInTree[network.Coordinator] = true;
        foreach (int site in chosen)
        {
            (int first, int end) = network.ArcsFrom(site);
            for (int arc = first; arc < end; arc++)
                if (network.NodeCost(network.Head(arc)) == 0) isInTree[network.Head(arc)] = true;
        }

        return Thin([.. sites.Where(Joins).OrderByDescending(network.NodeCost)]);

        bool Joins(int site)
        {
            int joined = 0;
            foreach (int arc in network.ArcsTo(site))
                if (isInTree[network.Tail(arc)]) joined++;
            return joined > 1;
        }
    }

    private bool[]? JoinNearest(bool[] isOpen, double[] lengths)
    {
        double[] distances = new double[network.NodeCount];
        int[] arrivedBy = new int[network.NodeCount];
        bool[] isInTree = new bool[network.NodeCount], isDevice = new bool[network.NodeCount];
        Array.Fill(distances, double.PositiveInfinity);
        foreach (int device in network.Devices) isDevice[device] = true;
        PriorityQueue<int, double> queue = new();
        isInTree[network.Coordinator] = true;
        Start(network.Coordinator);
        int left = network.Devices.Length;
        while (left > 0 && queue.TryDequeue(out int node, out double distance))
        {
            if (distance > distances[node]) continue;
            for (int at = node; isDevice[node] && !isInTree[at]; at = network.Tail(arrivedBy[at]))
            {
                isInTree[at] = true;
                if (isDevice[at]) left--;
                Start(at);
            }

            Spread(node);
        }

        return left == 0 ? isInTree : null;

        void Start(int node)
        {
            distances[node] = 0;
            queue.Enqueue(node, 0);
        }

        void Spread(int node)
        {
            (int first, int end) = network.ArcsFrom(node);
            for (int arc = first; arc < end; arc++)
            {
                int next = network.Head(arc);
                if (!isOpen[arc] || distances[node] + lengths[arc] >= distances[next]) continue;
                distances[next] = distances[node] + lengths[arc];
                arrivedBy[next] = arc;
                queue.Enqueue(next, distances[next]);
            }
        }
    }

    private bool[] Marked(IEnumerable<int> chosen)
    {
        bool[] isChosen = new bool[network.NodeCount];
        foreach (int site in chosen) isChosen[site] = true;
        return isChosen;
    }
}
