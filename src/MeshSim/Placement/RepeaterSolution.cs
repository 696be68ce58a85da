using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>The answer to a <see cref="RepeaterProblem"/>.</summary>
public sealed record RepeaterSolution
{
    /// <summary>The chosen outlets by their place among the outlets, in order.</summary>
    public required ImmutableArray<int> Outlets { get; init; }

    /// <summary>The devices that are out of reach everyday even when every outlet is chosen, in order.</summary>
    public required ImmutableArray<int> Unservable { get; init; }

    /// <summary>
    /// What else cannot be had even when every outlet is chosen, case by case: other situations in their order, then losses by lost
    /// node. Devices of <see cref="Unservable"/> are not named again for losses.
    /// </summary>
    public ImmutableArray<UnmetDemand> Unmet { get; init; } = [];

    /// <summary>All that cannot be had, everyday first.</summary>
    internal IEnumerable<UnmetDemand> Undone => UnmetDemand.All(Unservable, Unmet);

    /// <summary>What the outlets cost together; their number when each costs one.</summary>
    public required int Cost { get; init; }

    /// <summary>No choice that does what else is asked costs less.</summary>
    public required int LowerBound { get; init; }

    /// <summary>Number of cuts that the proof rests on.</summary>
    public int Cuts { get; init; }

    /// <summary>The work that went into it, but for bounds by trees.</summary>
    internal WorkDone Work { get; init; }

    /// <summary>Whether it is proven that nothing cheaper will do.</summary>
    public bool IsProven => Cost == LowerBound;
}
