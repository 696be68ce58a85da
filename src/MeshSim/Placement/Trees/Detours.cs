namespace MeshSim.Placement.Trees;

/// <summary>
/// Closes sites that join just two nodes and for which there is a way round no dearer. The way may rest at devices, which any tree
/// of routes contains anyway, and only its legs between these rests count: a tree with the site falls in two without it, and the leg
/// that joins the two again costs no more. Holds where no hop limit does. C. W. Duin, A. Volgenant, "Reduction tests for the Steiner
/// problem in graphs", Networks 19 (1989), 549–567.
/// </summary>
internal sealed class Detours
{
    private readonly RouteNetwork network;
    private readonly bool[] isOpen;
    private readonly bool[] isRest;
    private readonly int[] legs;
    private readonly List<int> touched = [];
    private readonly PriorityQueue<int, int> queue = new();

    private Detours(RouteNetwork network, bool[] isOpen)
    {
        this.network = network;
        this.isOpen = isOpen;
        isRest = new bool[network.NodeCount];
        isRest[network.Coordinator] = true;
        foreach (int device in network.Devices) isRest[device] = true;
        legs = new int[network.NodeCount];
        Array.Fill(legs, int.MaxValue);
    }

    /// <summary>Closes the entries of such sites, the dearest first.</summary>
    /// <param name="network">The network.</param>
    /// <param name="isOpen">Per arc whether it may be used.</param>
    public static void Close(RouteNetwork network, bool[] isOpen)
    {
        // A hop limit of as many links as there are nodes never holds anything up.
        if (network.HopLimit < network.NodeCount) return;
        Detours detours = new(network, isOpen);
        foreach (int site in Enumerable.Range(0, network.NodeCount).Where(node => network.NodeCost(node) > 0).OrderByDescending(network.NodeCost))
        {
            int[] entries = [.. network.ArcsTo(site)];
            if (entries.Length == 2 && JoinsNoOther(site, network.Tail(entries[0]), network.Tail(entries[1]), network)
                && detours.Exists(network.Tail(entries[0]), network.Tail(entries[1]), site))
                foreach (int arc in entries) isOpen[arc] = false;
        }
    }

    /// <summary>Whether a site is heard by nobody else: devices that pass nothing on hear it, but it is not entered from them.</summary>
    private static bool JoinsNoOther(int site, int one, int two, RouteNetwork network)
    {
        (int first, int end) = network.ArcsFrom(site);
        for (int arc = first; arc < end; arc++)
            if (network.Head(arc) != one && network.Head(arc) != two) return false;
        return true;
    }

    /// <summary>Whether one node leads to another over legs none of which costs more than a site, and without it.</summary>
    private bool Exists(int from, int to, int without)
    {
        int most = network.NodeCost(without);
        Arrive(from, 0);
        while (legs[to] == int.MaxValue && queue.TryDequeue(out int node, out int leg))
        {
            if (leg > legs[node]) continue;
            (int first, int end) = network.ArcsFrom(node);
            for (int arc = first; arc < end; arc++)
            {
                int next = network.Head(arc);
                if (isOpen[arc] && next != without && leg + network.NodeCost(next) <= most) Arrive(next, leg + network.NodeCost(next));
            }
        }

        bool exists = legs[to] != int.MaxValue;
        queue.Clear();
        foreach (int node in touched) legs[node] = int.MaxValue;
        touched.Clear();
        return exists;
    }

    private void Arrive(int node, int leg)
    {
        int rested = isRest[node] ? 0 : leg;
        if (rested >= legs[node]) return;
        if (legs[node] == int.MaxValue) touched.Add(node);
        legs[node] = rested;
        queue.Enqueue(node, rested);
    }
}
