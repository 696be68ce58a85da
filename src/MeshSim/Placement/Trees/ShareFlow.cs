namespace MeshSim.Placement.Trees;

/// <summary>
/// The cuts that shares of entries miss: the largest flow from the coordinator to a device, where an entry carries as much as is
/// chosen of it, is as large as the smallest cut; where it is less than one, that cut is missed. L. R. Ford, D. R. Fulkerson (1956);
/// flows are found by layers, after E. A. Dinic (1970).
/// </summary>
internal sealed class ShareFlow
{
    // Whole units per share of one. Every entry carries one unit more than its share, so that of equal cuts the one of fewest entries
    // is the smallest.
    private const int Whole = 1 << 20;
    private const int Enough = Whole - (Whole >> 10);
    private const int Boundless = int.MaxValue / 2;

    private readonly RouteNetwork network;
    private readonly int[] capacities;
    private readonly int[] flows;
    private readonly int[] layers;
    private readonly int[] nextOut;
    private readonly int[] nextIn;
    private readonly int[] queue;
    private readonly List<(int Arc, bool IsForward)> way = [];

    /// <summary>Prepares for a network.</summary>
    public ShareFlow(RouteNetwork network)
    {
        this.network = network;
        capacities = new int[network.ArcCount];
        flows = new int[network.ArcCount];
        layers = new int[network.NodeCount];
        nextOut = new int[network.NodeCount];
        nextIn = new int[network.NodeCount];
        queue = new int[network.NodeCount];
    }

    /// <summary>
    /// A series of cuts around one device, the first ones missed by most: the smallest cut nearest to the device and the one nearest to
    /// the coordinator, then the same with the entries of these as if they were chosen.
    /// </summary>
    /// <param name="shares">Per arc how much of it is chosen, 0 to 1.</param>
    /// <param name="isOpen">Per arc whether it may be used.</param>
    /// <param name="device">The device.</param>
    /// <param name="atMost">How many pairs of cuts to find.</param>
    public IEnumerable<int[]> CutsMissedBy(double[] shares, bool[] isOpen, int device, int atMost)
    {
        for (int arc = 0; arc < capacities.Length; arc++)
        {
            flows[arc] = 0;
            capacities[arc] = !isOpen[arc] ? 0 : network.Cost(arc) == 0 ? Boundless : 1 + (int)(Math.Clamp(shares[arc], 0, 1) * Whole);
        }

        int flow = 0;
        for (int pair = 0; pair < atMost; pair++)
        {
            flow += Augment(device, Whole - flow);
            if (flow >= Enough) yield break;
            int[] nearDevice = CutAround(device), nearCoordinator = CutAroundCoordinator();
            yield return nearDevice;
            if (!nearCoordinator.AsSpan().SequenceEqual(nearDevice)) yield return nearCoordinator;
            foreach (int arc in nearDevice) capacities[arc] = Whole;
            foreach (int arc in nearCoordinator) capacities[arc] = Whole;
        }
    }

    private int Augment(int device, int wanted)
    {
        int sent = 0;
        while (sent < wanted && MarkLayers(device))
        {
            for (int node = 0; node < layers.Length; node++)
            {
                nextOut[node] = network.ArcsFrom(node).First;
                nextIn[node] = 0;
            }

            while (sent < wanted && SendOnce(device, wanted - sent) is > 0 and int more) sent += more;
        }

        return sent;
    }

    /// <summary>Per node how many arcs with something left lie between it and the device; -1 where there is no way.</summary>
    private bool MarkLayers(int device)
    {
        Array.Fill(layers, -1);
        layers[device] = 0;
        queue[0] = device;
        int count = 1;
        for (int i = 0; i < count; i++)
        {
            int node = queue[i];
            foreach (int arc in network.ArcsTo(node))
                if (flows[arc] < capacities[arc]) Mark(network.Tail(arc), node);
            (int first, int end) = network.ArcsFrom(node);
            for (int arc = first; arc < end; arc++)
                if (flows[arc] > 0) Mark(network.Head(arc), node);
        }

        return layers[network.Coordinator] >= 0;

        void Mark(int node, int after)
        {
            if (layers[node] >= 0) return;
            layers[node] = layers[after] + 1;
            queue[count++] = node;
        }
    }

    /// <summary>Sends as much as one way down the layers holds.</summary>
    private int SendOnce(int device, int wanted)
    {
        way.Clear();
        int node = network.Coordinator;
        while (node != device)
        {
            if (StepFrom(node) is { } step)
            {
                way.Add(step);
                node = step.IsForward ? network.Head(step.Arc) : network.Tail(step.Arc);
                continue;
            }

            if (way.Count == 0) return 0;
            layers[node] = -1;
            (int arc, bool isForward) = way[^1];
            way.RemoveAt(way.Count - 1);
            node = isForward ? network.Tail(arc) : network.Head(arc);
        }

        int amount = wanted;
        foreach ((int arc, bool isForward) in way)
            amount = Math.Min(amount, isForward ? capacities[arc] - flows[arc] : flows[arc]);
        foreach ((int arc, bool isForward) in way)
            flows[arc] += isForward ? amount : -amount;
        return amount;
    }

    private (int Arc, bool IsForward)? StepFrom(int node)
    {
        int end = network.ArcsFrom(node).End;
        for (; nextOut[node] < end; nextOut[node]++)
        {
            int arc = nextOut[node];
            if (flows[arc] < capacities[arc] && layers[network.Head(arc)] == layers[node] - 1) return (arc, true);
        }

        ReadOnlySpan<int> arcsIn = network.ArcsTo(node);
        for (; nextIn[node] < arcsIn.Length; nextIn[node]++)
        {
            int arc = arcsIn[nextIn[node]];
            if (flows[arc] > 0 && layers[network.Tail(arc)] == layers[node] - 1) return (arc, false);
        }

        return null;
    }

    /// <summary>After the last marking no way is left, so the nodes marked are those that still lead to the device.</summary>
    private int[] CutAround(int device)
    {
        MarkLayers(device);
        return CutWhere(arc => layers[network.Tail(arc)] < 0 && layers[network.Head(arc)] >= 0);
    }

    private int[] CutAroundCoordinator()
    {
        bool[] isReached = new bool[network.NodeCount];
        isReached[network.Coordinator] = true;
        queue[0] = network.Coordinator;
        int count = 1;
        for (int i = 0; i < count; i++)
        {
            (int first, int end) = network.ArcsFrom(queue[i]);
            for (int arc = first; arc < end; arc++)
                if (flows[arc] < capacities[arc]) Reach(network.Head(arc));
            foreach (int arc in network.ArcsTo(queue[i]))
                if (flows[arc] > 0) Reach(network.Tail(arc));
        }

        return CutWhere(arc => isReached[network.Tail(arc)] && !isReached[network.Head(arc)]);

        void Reach(int node)
        {
            if (isReached[node]) return;
            isReached[node] = true;
            queue[count++] = node;
        }
    }

    private int[] CutWhere(Func<int, bool> crosses) =>
        [.. Enumerable.Range(0, capacities.Length).Where(arc => capacities[arc] > 0 && crosses(arc))];
}
