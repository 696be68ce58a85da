namespace MeshSim.Mesh;

/// <summary>Fewest links from each node to the coordinator.</summary>
internal static class HopCounts
{
    /// <summary>What a node has that no frame reaches.</summary>
    public const int Unreached = int.MaxValue;

    /// <summary>The fewest links to the coordinator of each node; <see cref="Unreached"/> beyond the hop limit.</summary>
    /// <param name="graph">The graph.</param>
    /// <param name="without">A node that is taken out, or -1.</param>
    public static int[] Of(MeshGraph graph, int without = -1)
    {
        var hops = new int[graph.Devices.Length];
        Array.Fill(hops, Unreached);
        if (graph.Coordinator < 0 || graph.Coordinator == without) return hops;

        hops[graph.Coordinator] = 0;
        var queue = new Queue<int>([graph.Coordinator]);
        while (queue.TryDequeue(out int node))
        {
            if (!graph.Relays(node) || hops[node] == graph.HopLimit) continue;
            foreach ((int next, Link _) in graph.UsableLinks(node))
            {
                if (next == without || hops[next] != Unreached) continue;
                hops[next] = hops[node] + 1;
                queue.Enqueue(next);
            }
        }

        return hops;
    }
}
