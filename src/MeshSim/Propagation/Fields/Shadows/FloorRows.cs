using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>The floors of one row after the other. Rows that are like the one before share its runs.</summary>
internal sealed class FloorRows(FloorTerm term)
{
    // All rows of a strip may differ, and the one before them is still looked at.
    private readonly FloorTerm.Scratch[] ring = [.. Enumerable.Range(0, ShadowLines.StripRows + 1).Select(_ => new FloorTerm.Scratch(term))];
    private int last;

    /// <summary>Begins with a transmitter.</summary>
    public void Start(Position transmitter) => term.Start(transmitter, ring[last]);

    /// <summary>The runs of a row, kept for as many rows as a strip has.</summary>
    public FloorTerm.Scratch At(Position transmitter, int row)
    {
        FloorTerm.Scratch before = ring[last];
        if (term.IsAsBefore(transmitter, row, before)) return before;
        last = (last + 1) % ring.Length;
        FloorTerm.Scratch found = ring[last];
        found.MeetAs(before);
        term.FindRuns(transmitter, row, found);
        return found;
    }
}
