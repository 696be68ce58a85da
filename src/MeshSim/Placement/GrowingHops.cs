using System.Numerics;

namespace MeshSim.Placement;

/// <summary>
/// The fewest links from one node to all others, up to the hop limit, while one node after the other begins to relay. Kept also as one row of bits per
/// number of links, so that what a new relay changes, mostly nothing, is found by whole words.
/// </summary>
internal sealed class GrowingHops
{
    private readonly ReachGraph graph;
    private readonly int limit;
    private readonly int words;
    private readonly ulong[] within;
    private readonly int[] queue;
    private readonly bool[] isQueued;

    /// <summary>Makes room.</summary>
    /// <param name="graph">The links that count.</param>
    public GrowingHops(ReachGraph graph)
    {
        this.graph = graph;
        int nodes = graph.Problem.NodeCount;
        limit = Math.Min(graph.Problem.HopLimit, nodes);
        words = NodeSet.WordsFor(nodes);
        within = new ulong[(limit + 1) * words];
        Hops = new int[nodes];
        queue = new int[nodes];
        isQueued = new bool[nodes];
    }

    /// <summary>Per node the fewest links; anything above the hop limit where there are more.</summary>
    public int[] Hops { get; }

    /// <summary>Begins with some counts.</summary>
    public void Begin(ReadOnlySpan<int> hops)
    {
        hops.CopyTo(Hops);
        Array.Clear(within);
        for (int node = 0; node < hops.Length; node++)
            if (hops[node] <= limit) Within(hops[node])[node / NodeSet.BitsPerWord] |= 1UL << (node % NodeSet.BitsPerWord);
        for (int word = words; word < within.Length; word++) within[word] |= within[word - words];
    }

    /// <summary>Passes on what a node that has begun to relay changes.</summary>
    /// <param name="start">The node.</param>
    /// <param name="passing">The nodes that pass frames on, that one among them.</param>
    public void Spread(int start, NodeSet passing)
    {
        // Each node waits at most once, so the ring of all nodes never overruns.
        int head = 0, count = 1;
        queue[0] = start;
        isQueued[start] = true;
        while (count > 0)
        {
            int node = queue[head];
            head = (head + 1) % queue.Length;
            count--;
            isQueued[node] = false;
            int next = Hops[node] + 1;
            if (next > limit) continue;
            ReadOnlySpan<ulong> row = graph.Row(node), near = Within(next);
            for (int word = 0; word < words; word++)
            {
                for (ulong nearer = row[word] & ~near[word]; nearer != 0; nearer &= nearer - 1)
                {
                    int other = (word * NodeSet.BitsPerWord) + BitOperations.TrailingZeroCount(nearer);
                    Lower(other, next);
                    if (!passing.Contains(other) || isQueued[other]) continue;
                    queue[(head + count) % queue.Length] = other;
                    isQueued[other] = true;
                    count++;
                }
            }
        }
    }

    private void Lower(int node, int hops)
    {
        ulong bit = 1UL << (node % NodeSet.BitsPerWord);
        for (int links = hops; links <= limit && links < Hops[node]; links++) Within(links)[node / NodeSet.BitsPerWord] |= bit;
        Hops[node] = hops;
    }

    /// <summary>The nodes that are so many links away or fewer.</summary>
    private Span<ulong> Within(int links) => within.AsSpan(links * words, words);
}
