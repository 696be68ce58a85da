namespace MeshSim.Placement.Zones;

/// <summary>The nodes on one side of a place, each with the fewest links that lead on from it.</summary>
internal sealed class DutyEnds
{
    private readonly (int Node, int Hops)[] ends;
    private readonly NodeSet[] within;

    /// <summary>Sorts the nodes by their links.</summary>
    /// <param name="ends">Nodes and links, in any order.</param>
    /// <param name="nodeCount">Number of all nodes.</param>
    public DutyEnds(IEnumerable<(int Node, int Hops)> ends, int nodeCount)
    {
        this.ends = [.. ends.OrderBy(end => end.Hops)];
        within = new NodeSet[this.ends.Length == 0 ? 0 : this.ends[^1].Hops + 1];
        for (int hops = 0, next = 0; hops < within.Length; hops++)
        {
            within[hops] = hops == 0 ? new(nodeCount) : within[hops - 1].Copy();
            for (; next < this.ends.Length && this.ends[next].Hops == hops; next++) within[hops].Add(this.ends[next].Node);
        }
    }

    /// <summary>Number of nodes.</summary>
    public int Count => ends.Length;

    /// <summary>The fewest links from any of some nodes; null when none of them is on this side.</summary>
    public int? FewestHops(NodeSet nodes)
    {
        for (int hops = 0; hops < within.Length; hops++)
            if (within[hops].Meets(nodes)) return hops;
        return null;
    }

    /// <summary>Whether one of some nodes is on this side with no more than so many links.</summary>
    public bool Includes(NodeSet nodes, int mostHops) => mostHops >= 0 && within.Length > 0 && within[Math.Min(mostHops, within.Length - 1)].Meets(nodes);

    /// <summary>The strongest margin among the nodes with no more than so many links, for each number of links from 0.</summary>
    /// <param name="marginsDb">Per node the margin of a link with the place, dB.</param>
    /// <param name="bestDb">Receives the margins, minus infinity where there is no node.</param>
    public void Best(ReadOnlySpan<double> marginsDb, Span<double> bestDb)
    {
        double soFarDb = double.NegativeInfinity;
        for (int hops = 0, next = 0; hops < bestDb.Length; hops++)
        {
            for (; next < ends.Length && ends[next].Hops == hops; next++) soFarDb = Math.Max(soFarDb, marginsDb[ends[next].Node]);
            bestDb[hops] = soFarDb;
        }
    }
}
