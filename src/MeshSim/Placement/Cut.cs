namespace MeshSim.Placement;

/// <summary>
/// What every choice must satisfy: of some outlets at least <see cref="Need"/> are chosen, where those of <see cref="Alone"/> count
/// for all that is needed.
/// </summary>
/// <param name="Outlets">The outlets, lowest first.</param>
/// <param name="Need">1; or 2 where one of them may fail.</param>
/// <param name="Alone">Those of the outlets that suffice alone, lowest first; of use only where two are needed.</param>
internal sealed record Cut(int[] Outlets, int Need, int[] Alone)
{
    /// <summary>At least one of some outlets.</summary>
    public static Cut One(int[] outlets) => new(outlets, 1, []);

    /// <summary>For how many an outlet counts.</summary>
    public int WeightOf(int outlet) => Array.BinarySearch(Alone, outlet) >= 0 ? Need : 1;

    /// <summary>By how much shares of the outlets miss the cut; 0 or less when they satisfy it.</summary>
    public double MissedBy(double[] shares)
    {
        double sum = 0;
        foreach (int outlet in Outlets) sum += shares[outlet] * WeightOf(outlet);
        return Need - sum;
    }

    /// <inheritdoc/>
    public bool Equals(Cut? other) =>
        other is not null && Need == other.Need && Outlets.AsSpan().SequenceEqual(other.Outlets) && Alone.AsSpan().SequenceEqual(other.Alone);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        HashCode hash = default;
        hash.Add(Need);
        foreach (int outlet in Outlets) hash.Add(outlet);
        return hash.ToHashCode();
    }
}
