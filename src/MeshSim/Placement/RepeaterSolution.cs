using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>The answer to a <see cref="RepeaterProblem"/>.</summary>
public sealed record RepeaterSolution
{
    /// <summary>The chosen outlets by their place among the outlets, in order.</summary>
    public required ImmutableArray<int> Outlets { get; init; }

    /// <summary>The devices that are out of reach even when every outlet is chosen, in order.</summary>
    public required ImmutableArray<int> Unservable { get; init; }

    /// <summary>Fewer outlets than this cannot serve the other devices.</summary>
    public required int LowerBound { get; init; }

    /// <summary>Whether it is proven that fewer will not do.</summary>
    public bool IsProven => Outlets.Length == LowerBound;
}
