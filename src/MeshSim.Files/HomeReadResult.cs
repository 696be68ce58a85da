using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;

namespace MeshSim.Files;

/// <summary>What reading a home folder gave: a home, or everything that is wrong with it. Never both.</summary>
public sealed record HomeReadResult
{
    /// <summary>The home; null when there are problems.</summary>
    public required Home? Home { get; init; }

    /// <summary>What is wrong, by file, line and column; empty when there is a home.</summary>
    public required ImmutableArray<Diagnostic> Problems { get; init; }

    /// <summary>What could be placed on a plan, whatever is wrong; null when that is nothing.</summary>
    public required HomeDraft? Draft { get; init; }

    /// <summary>What was assumed or moved, by file, line and column.</summary>
    public required ImmutableArray<Diagnostic> Notices { get; init; }
}
