namespace MeshSim.Mesh;

/// <summary>
/// Counts routes that share no relay: by Menger's theorem the largest flow from a device to the coordinator when each relay
/// passes one unit. Every node is split in two, joined by an arc of capacity one; each usable link carries one unit either way.
/// </summary>
public sealed class DisjointRoutes
{
    private readonly MeshGraph graph;
    private readonly List<int>[] arcsFrom;
    private readonly List<int> target = [];
    private readonly List<int> capacity = [];

    /// <summary>Prepares the flow network of a graph.</summary>
    public DisjointRoutes(MeshGraph graph)
    {
        this.graph = graph;
        arcsFrom = new List<int>[2 * graph.Devices.Length];
        for (int i = 0; i < arcsFrom.Length; i++)
            arcsFrom[i] = [];
        for (int node = 0; node < graph.Devices.Length; node++)
        {
            if (graph.Relays(node)) AddArc(Entry(node), Exit(node));
            foreach ((int next, Link _) in graph.UsableLinks(node))
                if (graph.Relays(next)) AddArc(Exit(node), Entry(next));
        }
    }

    /// <summary>The largest number of routes from a node to the coordinator that share no relay; a direct link counts as one.</summary>
    /// <param name="node">Any node but the coordinator's.</param>
    /// <returns>0 when there is no route, or when the coordinator has no power.</returns>
    public int Count(int node) => Count(node, int.MaxValue);

    /// <summary>The same, counted no further than asked.</summary>
    /// <param name="node">Any node but the coordinator's.</param>
    /// <param name="atMost">Where counting stops.</param>
    public int Count(int node, int atMost)
    {
        ArgumentOutOfRangeException.ThrowIfEqual(node, graph.Coordinator);
        if (graph.Coordinator < 0) return 0;

        int[] left = [.. capacity];
        int count = 0;
        while (count < atMost && Augment(left, Exit(node), Entry(graph.Coordinator)))
            count++;
        return count;
    }

    private static int Entry(int node) => 2 * node;

    private static int Exit(int node) => (2 * node) + 1;

    /// <summary>Adds an arc of capacity one and, at the next index, its reverse of capacity zero.</summary>
    private void AddArc(int from, int to)
    {
        arcsFrom[from].Add(target.Count);
        target.Add(to);
        capacity.Add(1);
        arcsFrom[to].Add(target.Count);
        target.Add(from);
        capacity.Add(0);
    }

    /// <summary>Finds a shortest way with capacity left, by breadth, and sends one unit along it.</summary>
    private bool Augment(int[] capacity, int source, int sink)
    {
        var arrivedBy = new int[arcsFrom.Length];
        Array.Fill(arrivedBy, -1);
        var queue = new Queue<int>([source]);
        while (queue.Count > 0 && arrivedBy[sink] < 0)
        {
            int vertex = queue.Dequeue();
            foreach (int arc in arcsFrom[vertex])
            {
                int next = target[arc];
                if (capacity[arc] == 0 || next == source || arrivedBy[next] >= 0) continue;
                arrivedBy[next] = arc;
                queue.Enqueue(next);
            }
        }

        if (arrivedBy[sink] < 0) return false;
        for (int vertex = sink; vertex != source; vertex = target[arrivedBy[vertex] ^ 1])
        {
            capacity[arrivedBy[vertex]]--;
            capacity[arrivedBy[vertex] ^ 1]++;
        }

        return true;
    }
}
