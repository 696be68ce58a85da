namespace MeshSim.Placement;

/// <summary>The cuts found so far: sets of outlets, in order, of which each must be hit by whatever is chosen.</summary>
internal sealed class CutPool
{
    private static readonly EqualityComparer<int[]> SameOutlets = EqualityComparer<int[]>.Create(
        (a, b) => a.AsSpan().SequenceEqual(b),
        cut =>
        {
            HashCode hash = default;
            foreach (int outlet in cut) hash.Add(outlet);
            return hash.ToHashCode();
        });

    private readonly List<int[]> cuts;
    private readonly HashSet<int[]> known;

    /// <summary>An empty pool.</summary>
    public CutPool()
        : this([])
    {
    }

    private CutPool(List<int[]> cuts)
    {
        this.cuts = cuts;
        known = new(cuts, SameOutlets);
    }

    /// <summary>All cuts in the order in which they were found.</summary>
    public IReadOnlyList<int[]> Cuts => cuts;

    /// <summary>Adds a cut. False when it was there.</summary>
    public bool Add(int[] cut)
    {
        if (!known.Add(cut)) return false;
        cuts.Add(cut);
        return true;
    }

    /// <summary>A pool of the same cuts that grows on its own.</summary>
    public CutPool Copy() => new([.. cuts]);
}
