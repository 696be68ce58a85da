namespace MeshSim.Placement;

/// <summary>
/// How much work to put into a proof, counted in steps and not in seconds, so that every machine stops at the same place with
/// the same answer.
/// </summary>
public sealed record WorkLimit
{
    /// <summary>Exact masters per question; a house needs one or two.</summary>
    public int Rounds { get; init; } = 8;

    /// <summary>Nodes of the search tree per exact master.</summary>
    public int NodesPerRound { get; init; } = 500;
}
