namespace MeshSim.Mesh.Reliability;

/// <summary>
/// Who is reached in 64 draws at once: bit k of a word stands for draw k. A frame spreads from the coordinator by one link per
/// round, over relays, until the hop limit; a round is an AND and an OR for each link and direction.
/// </summary>
internal sealed class ReachWords
{
    private readonly (int From, int To, int Link)[] _arcs;
    private readonly int _coordinator;
    private readonly int _rounds;
    private readonly ulong[] _front;
    private readonly ulong[] _next;

    /// <summary>Prepares buffers for one thread.</summary>
    /// <param name="graph">The graph; a link takes part whatever its margin.</param>
    /// <param name="ends">The ends of each link.</param>
    public ReachWords(MeshGraph graph, ReadOnlySpan<(int From, int To)> ends)
        : this(graph.Devices.Length, graph.Coordinator, graph.HopLimit, graph.Relays, ends)
    {
    }

    /// <summary>Prepares buffers for one thread.</summary>
    /// <param name="nodes">Number of nodes.</param>
    /// <param name="coordinator">Where frames start; negative when it is off.</param>
    /// <param name="hopLimit">Most links in a row.</param>
    /// <param name="relays">Whether a node passes frames on.</param>
    /// <param name="ends">The ends of each link; a link takes part whatever its margin.</param>
    public ReachWords(int nodes, int coordinator, int hopLimit, Func<int, bool> relays, ReadOnlySpan<(int From, int To)> ends)
    {
        var arcs = new List<(int From, int To, int Link)>();
        for (int link = 0; link < ends.Length; link++)
        {
            (int from, int to) = ends[link];
            if (relays(from)) arcs.Add((from, to, link));
            if (relays(to)) arcs.Add((to, from, link));
        }

        _arcs = [.. arcs];
        _coordinator = coordinator;
        _rounds = Math.Min(hopLimit, nodes - 1);
        Reached = new ulong[nodes];
        _front = new ulong[nodes];
        _next = new ulong[nodes];
    }

    /// <summary>For each node the draws in which it is reached, as the last <see cref="Spread"/> left it.</summary>
    public ulong[] Reached { get; }

    /// <summary>Finds who is reached.</summary>
    /// <param name="links">For each link the draws in which it exists.</param>
    public void Spread(ReadOnlySpan<ulong> links)
    {
        Array.Clear(Reached);
        Array.Clear(_front);
        if (_coordinator < 0) return;

        Reached[_coordinator] = _front[_coordinator] = ulong.MaxValue;
        ulong moved = ulong.MaxValue;
        for (int round = 0; round < _rounds && moved != 0; round++)
        {
            Array.Clear(_next);
            foreach ((int from, int to, int link) in _arcs)
                _next[to] |= _front[from] & links[link];

            moved = 0;
            for (int node = 0; node < _next.Length; node++)
            {
                _front[node] = _next[node] & ~Reached[node];
                Reached[node] |= _front[node];
                moved |= _front[node];
            }
        }
    }
}
