using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.FloorPlans;

namespace MeshSim.Files.Importing;

/// <summary>So many things of one kind that a drawing gave a storey.</summary>
/// <param name="Storey">The storey.</param>
/// <param name="What">The kind, in the plural: "walls".</param>
/// <param name="Of">What they are built of; "" where that means nothing.</param>
/// <param name="Count">How many.</param>
/// <param name="LengthMetres">Their length together, m; 0 where that means nothing.</param>
public readonly record struct TakenThings(StoreyName Storey, string What, string Of, int Count, double LengthMetres);

/// <summary>What became of a drawing.</summary>
public sealed record ImportResult
{
    /// <summary>The home; null when there are problems.</summary>
    public required Home? Home { get; init; }

    /// <summary>What must be put right, all of it.</summary>
    public required ImmutableArray<Diagnostic> Problems { get; init; }

    /// <summary>What was assumed, moved or left out, by file, line and column; of many the first.</summary>
    public required ImmutableArray<Diagnostic> Notices { get; init; }

    /// <summary>Everything of the drawing that is not in the home, each with the reason.</summary>
    public required ImmutableArray<Diagnostic> LeftOut { get; init; }

    /// <summary>What was taken, storey by storey.</summary>
    public required ImmutableArray<TakenThings> Taken { get; init; }

    /// <summary>How lengths were found, what was moved, and what was assumed of all, as sentences without a full stop.</summary>
    public required ImmutableArray<string> Remarks { get; init; }
}
