using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Files.Importing;

namespace MeshSim.Cli.Tables;

/// <summary>What a drawing gave.</summary>
internal static class ImportTables
{
    /// <summary>What was taken, storey by storey.</summary>
    public static Table Taken(ImportResult result) => new(
        [new("Storey"), new("Taken"), new("Built of"), new("Number", true), new("Length m", true)],
        [
            .. result.Taken
                .GroupBy(taken => (taken.Storey, taken.What, taken.Of))
                .Select(group => ImmutableArray.Create(
                    group.Key.Storey.Value,
                    group.Key.What,
                    group.Key.Of,
                    Figures.Count(group.Sum(taken => taken.Count)),
                    group.Sum(taken => taken.LengthMetres) is > 0 and var metres ? Figures.Tenths(metres) : "")),
        ]);
}
