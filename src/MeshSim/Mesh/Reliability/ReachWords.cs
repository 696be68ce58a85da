namespace MeshSim.Mesh.Reliability;

/// <summary>
/// Who is reached in 64 draws at once: bit k of a word stands for draw k. A frame spreads from the coordinator by one link per
/// round, over relays, until the hop limit; a round is an AND and an OR for each link and direction.
/// </summary>
internal sealed class ReachWords
{
    private readonly (int From, int To, int Link)[] arcs;
    private readonly ulong[] front;
    private readonly ulong[] next;

    /// <summary>Prepares buffers for one thread.</summary>
    /// <param name="nodes">Number of nodes.</param>
    /// <param name="mayRelay">Whether a node passes frames on in any spreading that is asked for.</param>
    /// <param name="ends">The ends of each link; a link takes part whatever its margin.</param>
    public ReachWords(int nodes, Func<int, bool> mayRelay, ReadOnlySpan<(int From, int To)> ends)
    {
        List<(int From, int To, int Link)> both = [];
        for (int link = 0; link < ends.Length; link++)
        {
            (int from, int to) = ends[link];
            if (mayRelay(from)) both.Add((from, to, link));
            if (mayRelay(to)) both.Add((to, from, link));
        }

        arcs = [.. both];
        Reached = new ulong[nodes];
        front = new ulong[nodes];
        next = new ulong[nodes];
    }

    /// <summary>For each node the draws in which it is reached, as the last <see cref="Spread"/> left it.</summary>
    public ulong[] Reached { get; }

    /// <summary>Finds who is reached.</summary>
    /// <param name="spreading">From where and over whom.</param>
    /// <param name="links">For each link the draws in which it exists.</param>
    public void Spread(Spreading spreading, ReadOnlySpan<ulong> links)
    {
        Array.Clear(Reached);
        Array.Clear(front);
        if (spreading.Coordinator < 0) return;

        Reached[spreading.Coordinator] = front[spreading.Coordinator] = ulong.MaxValue;
        int rounds = Math.Min(spreading.HopLimit, Reached.Length - 1);
        ulong moved = ulong.MaxValue;
        for (int round = 0; round < rounds && moved != 0; round++)
        {
            Array.Clear(next);
            foreach ((int from, int to, int link) in arcs)
                next[to] |= front[from] & links[link];

            moved = 0;
            for (int node = 0; node < next.Length; node++)
            {
                ulong reached = next[node] & ~Reached[node];
                Reached[node] |= reached;
                front[node] = spreading.Relays[node] ? reached : 0;
                moved |= front[node];
            }
        }
    }
}
