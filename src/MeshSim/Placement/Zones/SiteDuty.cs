using System.Collections.Immutable;

namespace MeshSim.Placement.Zones;

/// <summary>
/// One device in one case that is cut off unless the place joins the two sides: on the way from the coordinator to the place, over
/// an entry, and on to the device, over an exit, no more links than the hop limit.
/// </summary>
/// <param name="Situation">Whose links count.</param>
/// <param name="Entries">The nodes that the coordinator reaches without the place, with their links to it; empty when the place is the coordinator's own.</param>
/// <param name="Exits">The nodes from which the device is reached without the place, with their links to it.</param>
internal sealed record SiteDuty(int Situation, ImmutableArray<(int Node, int Hops)> Entries, ImmutableArray<(int Node, int Hops)> Exits)
{
    /// <summary>The margin of the weaker of its two links, over the entry and the exit that make it strongest, dB.</summary>
    /// <param name="marginsDb">Per node the margin of a link with the place, dB.</param>
    /// <param name="hopLimit">Most links in a row.</param>
    public double StrengthDb(ReadOnlySpan<double> marginsDb, int hopLimit)
    {
        if (Entries.IsEmpty) return Best(Exits, marginsDb, hopLimit - 1);

        double strengthDb = double.NegativeInfinity;
        foreach ((int node, int hops) in Entries)
        {
            if (marginsDb[node] <= strengthDb) continue;
            strengthDb = Math.Max(strengthDb, Math.Min(marginsDb[node], Best(Exits, marginsDb, hopLimit - hops - 2)));
        }

        return strengthDb;
    }

    private static double Best(ImmutableArray<(int Node, int Hops)> ends, ReadOnlySpan<double> marginsDb, int most)
    {
        double bestDb = double.NegativeInfinity;
        foreach ((int node, int hops) in ends)
            if (hops <= most && marginsDb[node] > bestDb) bestDb = marginsDb[node];
        return bestDb;
    }
}
