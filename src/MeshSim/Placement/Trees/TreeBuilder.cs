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
        if (!Serves(chosen)) return null;
        for (int[] other = Exchange(chosen); other.Sum(network.NodeCost) < chosen.Sum(network.NodeCost); other = Exchange(chosen)) chosen = other;
        return chosen;
    }

    /// <summary>Whether some sites serve every device.</summary>
    public bool Serves(IEnumerable<int> chosen) => network.IsServedBy(Marked(chosen));

    /// <summary>
    /// Adds every site that joins two nodes of the tree and gives up as much as possible, the dearest first: among the same nodes
    /// the least costly tree where sites join two nodes each.
    /// </summary>
    private int[] Exchange(int[] chosen)
    {
        bool[] isChosen = Marked(chosen), isInTree = network.ReachedOver(isChosen);
        int[] order = [.. sites.Where(site => isChosen[site] || Joins(site)).OrderByDescending(network.NodeCost)];
        return ChosenSets.Thin(order, Serves);

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
