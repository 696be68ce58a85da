namespace MeshSim.Placement.Trees;

/// <summary>
/// A lower bound for the least costly tree of routes, without a linear program: as long as a device cannot be reached over entries that
/// are paid up, all entries of a cut around it are charged the same, as much as the cheapest of them still costs. Whatever tree
/// is bought pays at least the sum of the charges, because it enters each of these cuts.
/// R. T. Wong, "A dual ascent approach for Steiner tree problems on a directed graph", Mathematical Programming 28 (1984), 271–287.
/// </summary>
internal sealed class DualAscent
{
    private readonly RouteNetwork network;
    private readonly bool[] isOpen;
    private readonly int[] stamps;
    private readonly List<int> reaching = [];
    private readonly List<int> cut = [];
    private int stamp;

    /// <summary>Raises the bound as far as it goes.</summary>
    /// <param name="network">The network; hop limits are not looked at, which can only lower the bound.</param>
    /// <param name="isOpen">Per arc whether it may be used.</param>
    public DualAscent(RouteNetwork network, bool[] isOpen)
    {
        this.network = network;
        this.isOpen = isOpen;
        stamps = new int[network.NodeCount];
        Unpaid = [.. Enumerable.Range(0, network.ArcCount).Select(network.Cost)];
        Ascend();
    }

    /// <summary>Nothing that reaches every device costs less; the largest number when nothing reaches every device.</summary>
    public int Bound { get; private set; }

    /// <summary>Per arc what has not been charged of its cost.</summary>
    public int[] Unpaid { get; }

    /// <summary>The cuts that were charged: arcs of which each tree of routes uses at least one.</summary>
    public List<int[]> Cuts { get; } = [];

    /// <summary>
    /// Closes every arc that no tree cheaper than a known one can use: it would pay, beyond the bound, what is unpaid on a way from the
    /// coordinator over that arc to some device.
    /// </summary>
    /// <param name="upper">What the known one costs.</param>
    /// <returns>Whether an arc was closed.</returns>
    public bool Close(int upper)
    {
        int[] from = Distances([network.Coordinator], isForward: true), to = Distances(network.Devices, isForward: false);
        bool any = false;
        for (int arc = 0; arc < Unpaid.Length; arc++)
        {
            if (!isOpen[arc]) continue;
            long least = (long)Bound + from[network.Tail(arc)] + Unpaid[arc] + to[network.Head(arc)];
            if (least < upper) continue;
            isOpen[arc] = false;
            any = true;
        }

        return any;
    }

    /// <summary>Devices with few arcs around them first: their charges stand in the way of the fewest others.</summary>
    private void Ascend()
    {
        PriorityQueue<int, (int Arcs, int Device)> waiting = new();
        foreach (int device in network.Devices) waiting.Enqueue(device, (network.ArcsTo(device).Length, device));
        while (waiting.TryDequeue(out int device, out (int Arcs, int Device) expected))
        {
            if (!FindCut(device)) continue;
            if (waiting.TryPeek(out _, out (int Arcs, int Device) next) && cut.Count > next.Arcs && cut.Count > expected.Arcs)
            {
                waiting.Enqueue(device, (cut.Count, device));
                continue;
            }

            if (cut.Count == 0)
            {
                Bound = int.MaxValue;
                return;
            }

            int least = cut.Min(arc => Unpaid[arc]);
            foreach (int arc in cut) Unpaid[arc] -= least;
            Bound += least;
            Cuts.Add([.. cut.Order()]);
            waiting.Enqueue(device, (cut.Count, device));
        }
    }

    /// <summary>The open arcs into the nodes from which a device is reached for nothing. False when the coordinator is one of them.</summary>
    private bool FindCut(int device)
    {
        stamp++;
        reaching.Clear();
        cut.Clear();
        reaching.Add(device);
        stamps[device] = stamp;
        for (int i = 0; i < reaching.Count; i++)
        {
            foreach (int arc in network.ArcsTo(reaching[i]))
            {
                int tail = network.Tail(arc);
                if (!isOpen[arc] || stamps[tail] == stamp) continue;
                if (Unpaid[arc] > 0)
                {
                    cut.Add(arc);
                    continue;
                }

                if (tail == network.Coordinator) return false;
                stamps[tail] = stamp;
                reaching.Add(tail);
            }
        }

        cut.RemoveAll(arc => stamps[network.Tail(arc)] == stamp);
        return true;
    }

    private int[] Distances(int[] sources, bool isForward)
    {
        int[] distances = new int[network.NodeCount];
        Array.Fill(distances, int.MaxValue);
        PriorityQueue<int, int> queue = new();
        foreach (int source in sources)
        {
            distances[source] = 0;
            queue.Enqueue(source, 0);
        }

        while (queue.TryDequeue(out int node, out int distance))
        {
            if (distance > distances[node]) continue;
            (int first, int end) = network.ArcsFrom(node);
            if (isForward)
                for (int arc = first; arc < end; arc++) Reach(arc, network.Head(arc), distance);
            else
                foreach (int arc in network.ArcsTo(node)) Reach(arc, network.Tail(arc), distance);
        }

        return distances;

        void Reach(int arc, int next, int distance)
        {
            if (!isOpen[arc] || distance + Unpaid[arc] >= distances[next]) return;
            distances[next] = distance + Unpaid[arc];
            queue.Enqueue(next, distances[next]);
        }
    }
}
