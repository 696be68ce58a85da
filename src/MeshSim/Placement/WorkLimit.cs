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

    /// <summary>Nodes of the search tree per exact master.</summary>
    public int NodesPerRound { get; init; } = 500;

    /// <summary>Masters per kind of coverage and rung of a ladder.</summary>
    public int CoverageRounds { get; init; } = 60;
}
