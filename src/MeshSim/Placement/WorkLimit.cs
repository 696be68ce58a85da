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

    /// <summary>The same for all questions together that only decide among choices of equal cost.</summary>
    public int RelaxationsForTies { get; init; } = 100;

    /// <summary>
    /// Searches from one node to all others per question; a house needs some thousands, the floor of an apartment block with weak senders up to
    /// a million and 25 µs each.
    /// </summary>
    public long Searches { get; init; } = 1_000_000;

    /// <summary>The same for all questions together that only decide among choices of equal cost.</summary>
    public long SearchesForTies { get; init; } = 300_000;

    /// <summary>Of these searches, how many may go into replacing two outlets of a choice by one, each time that there is a new one.</summary>
    public long SearchesPerExchange { get; init; } = 20_000;

    /// <summary>Relaxed masters for the bound by trees of routes, which is sought where the cuts leave a gap.</summary>
    public int TreeRelaxations { get; init; } = 20;

    /// <summary>Nodes of the search tree per exact master.</summary>
    public int NodesPerRound { get; init; } = 500;

    /// <summary>
    /// Nodes of the search tree times entries of the cuts, per question: a node over many long cuts takes longer than one over few. A house needs some
    /// ten thousand.
    /// </summary>
    public long NodeEntries { get; init; } = 20_000_000;

    /// <summary>The same for all questions together that only decide among choices of equal cost.</summary>
    public long NodeEntriesForTies { get; init; } = 5_000_000;

    /// <summary>Masters per kind of coverage and rung of a ladder.</summary>
    public int CoverageRounds { get; init; } = 60;

    /// <summary>
    /// Patches of floor times outlets beyond which the most floor is not sought by masters: the best next repeater decides then, and no rung is proven.
    /// A house has 130,000, the floor of an apartment block three million, which took minutes.
    /// </summary>
    public long FloorSize { get; init; } = 500_000;

    /// <summary>
    /// Nodes squared, summed over the sites of a hub, up to which each site has the work of a whole question. A house with a hundred sites has two
    /// million, the floor of an apartment block six hundred: there all sites but the present and the best one together have about the work of one
    /// question, those first whose bounds promise most.
    /// </summary>
    public long SitesSize { get; init; } = 24_000_000;

    /// <summary>The work for one of several questions that have to make do together with the work for one.</summary>
    /// <param name="questions">How many there are, 1 or more.</param>
    public WorkLimit SharedBy(int questions)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(questions, 1);
        return this with
        {
            Relaxations = (int)Part(Relaxations),
            RelaxationsForTies = (int)Part(RelaxationsForTies),
            Searches = Part(Searches),
            SearchesForTies = Part(SearchesForTies),
            NodeEntries = Part(NodeEntries),
            NodeEntriesForTies = Part(NodeEntriesForTies),
        };

        long Part(long work) => (work + questions - 1) / questions;
    }

    /// <summary>The work that is left for ties, as if they were a question of their own.</summary>
    internal WorkLimit ForTies() => this with { Relaxations = RelaxationsForTies, Searches = SearchesForTies, NodeEntries = NodeEntriesForTies };

    /// <summary>What is left of it.</summary>
    internal WorkLimit Less(WorkDone done) => this with
    {
        Relaxations = Math.Max(0, Relaxations - done.Relaxations),
        Searches = Math.Max(0, Searches - done.Searches),
        NodeEntries = Math.Max(0, NodeEntries - done.NodeEntries),
    };
}

/// <summary>Work that went into a question, counted as in <see cref="WorkLimit"/>.</summary>
/// <param name="Relaxations">Relaxed masters.</param>
/// <param name="Searches">Searches from one node to all others.</param>
/// <param name="NodeEntries">Nodes of the search tree times entries of the cuts.</param>
internal readonly record struct WorkDone(int Relaxations, long Searches, long NodeEntries)
{
    /// <summary>That of two searches.</summary>
    public static WorkDone operator +(WorkDone a, WorkDone b) => new(a.Relaxations + b.Relaxations, a.Searches + b.Searches, a.NodeEntries + b.NodeEntries);
}
