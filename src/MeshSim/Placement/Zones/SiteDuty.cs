namespace MeshSim.Placement.Zones;

/// <summary>
/// One device in one case that is cut off unless the place joins the two sides: on the way from the coordinator to the place, over
/// an entry, and on to the device, over an exit, no more links than the hop limit.
/// </summary>
/// <param name="Situation">Whose links count.</param>
/// <param name="Entries">The nodes that the coordinator reaches without the place, with their links to it; null when the place is the coordinator's own.</param>
/// <param name="Exits">The nodes from which the device is reached without the place, with their links to it.</param>
internal sealed record SiteDuty(int Situation, DutyEnds? Entries, DutyEnds Exits)
{
    /// <summary>The margin of the weaker of its two links, over the entry and the exit that make it strongest, dB.</summary>
    /// <param name="marginsDb">Per node the margin of a link with the place, dB.</param>
    /// <param name="hopLimit">Most links in a row.</param>
    public double StrengthDb(ReadOnlySpan<double> marginsDb, int hopLimit)
    {
        Span<double> exitDb = stackalloc double[hopLimit];
        Exits.Best(marginsDb, exitDb);
        if (Entries is null) return exitDb[^1];

        Span<double> entryDb = stackalloc double[hopLimit];
        Entries.Best(marginsDb, entryDb);
        double strengthDb = double.NegativeInfinity;
        for (int hops = 0; hops <= hopLimit - 2; hops++)
            strengthDb = Math.Max(strengthDb, Math.Min(entryDb[hops], exitDb[hopLimit - 2 - hops]));
        return strengthDb;
    }

    /// <summary>
    /// Whether the place does it over links with some nodes alone. With all nodes whose margin is at least so much, that is whether
    /// <see cref="StrengthDb"/> is, for a few words of bits instead of every entry and exit.
    /// </summary>
    /// <param name="nodes">The nodes.</param>
    /// <param name="hopLimit">Most links in a row.</param>
    public bool IsDoneOver(NodeSet nodes, int hopLimit) => Entries is null
        ? Exits.Includes(nodes, hopLimit - 1)
        : Entries.FewestHops(nodes) is { } hops && Exits.Includes(nodes, hopLimit - 2 - hops);
}
