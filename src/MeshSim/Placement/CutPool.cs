namespace MeshSim.Placement;

/// <summary>The cuts found so far, which whatever is chosen must satisfy.</summary>
internal sealed class CutPool
{
    private readonly List<Cut> cuts;
    private readonly HashSet<Cut> known;

    /// <summary>An empty pool.</summary>
    public CutPool()
        : this([])
    {
    }

    private CutPool(List<Cut> cuts)
    {
        this.cuts = cuts;
        known = [.. cuts];
    }

    /// <summary>All cuts in the order in which they were found.</summary>
    public IReadOnlyList<Cut> Cuts => cuts;

    /// <summary>Adds a cut. False when it was there.</summary>
    public bool Add(Cut cut)
    {
        if (!known.Add(cut)) return false;
        cuts.Add(cut);
        return true;
    }

    /// <summary>A pool of the same cuts that grows on its own.</summary>
    public CutPool Copy() => new([.. cuts]);
}
