using System.Collections.Immutable;

namespace MeshSim.Cli.Tables;

/// <summary>One column of a table.</summary>
/// <param name="Heading">What stands above it.</param>
/// <param name="IsNumber">Whether its cells line up on the right.</param>
internal readonly record struct Column(string Heading, bool IsNumber = false);

/// <summary>A table of words and figures, ready for the terminal or the report alike.</summary>
/// <param name="Columns">At least one.</param>
/// <param name="Rows">Each as long as the columns.</param>
internal sealed record Table(ImmutableArray<Column> Columns, ImmutableArray<ImmutableArray<string>> Rows)
{
    /// <summary>What a reader must know to read the figures; empty when nothing.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];
}
