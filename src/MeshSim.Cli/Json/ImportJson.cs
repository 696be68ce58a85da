using System.Collections.Immutable;
using MeshSim.Files.Importing;

namespace MeshSim.Cli.Json;

/// <summary>What became of a drawing, as JSON.</summary>
internal sealed record ImportJson(
    string Home, string Folder, ImmutableArray<TakenJson> Taken, ImmutableArray<string> Remarks, ImmutableArray<LeftOutJson> LeftOut)
{
    /// <summary>The record of an import that gave a home.</summary>
    public static ImportJson Of(ImportResult result, string folder) => new(
        result.Home!.Name,
        folder,
        [.. result.Taken.Select(taken => new TakenJson(taken.Storey.Value, taken.What, taken.Of, taken.Count, taken.LengthMetres))],
        result.Remarks,
        [.. result.LeftOut.Select(one => new LeftOutJson(one.File, one.Line, one.Column, one.Message, one.Help))]);
}

/// <summary>So many things of one kind.</summary>
internal sealed record TakenJson(string Storey, string What, string Of, int Count, double LengthMetres);

/// <summary>Something that is not in the home.</summary>
internal sealed record LeftOutJson(string File, int Line, int Column, string What, string Why);
