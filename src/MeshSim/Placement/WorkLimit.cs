namespace MeshSim.Placement;

/// <summary>
/// How much work to put into a proof, counted in steps and not in seconds, so that every machine stops at the same place with
/// the same answer.
/// </summary>
public sealed record WorkLimit
{
    /// <summary>Exact masters per question; a house needs one or two.</summary>
    public int Rounds { get; init; } = 8;

    /// <summary>Relaxed masters per question; a house needs a few dozen.</summary>
    public int Relaxations { get; init; } = 400;

    /// <summary>The same for each question that only decides among choices of equal cost.</summary>
    public int RelaxationsPerTie { get; init; } = 50;

    /// <summary>
    /// Searches from one node to all others per question, counted between one choice and the next; a house needs some thousands, the floor of an apartment
    /// block with weak senders up to 600,000 and 25 µs each.
    /// </summary>
    public long Searches { get; init; } = 1_500_000;

    /// <summary>The same for each question that only decides among choices of equal cost.</summary>
    public long SearchesPerTie { get; init; } = 150_000;

    /// <summary>Relaxed masters for the bound by trees of routes, which is sought where the cuts leave a gap.</summary>
    public int TreeRelaxations { get; init; } = 20;

    /// <summary>Nodes of the search tree per exact master.</summary>
    public int NodesPerRound { get; init; } = 500;

    /// <summary>Masters per kind of coverage and rung of a ladder.</summary>
    public int CoverageRounds { get; init; } = 60;
}
