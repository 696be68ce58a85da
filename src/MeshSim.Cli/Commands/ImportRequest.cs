using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Files;
using MeshSim.Files.Importing;

namespace MeshSim.Cli.Commands;

/// <summary>What a command line of <c>import</c> asks for.</summary>
internal static class ImportRequest
{
    /// <summary>Units of coordinates, in metres; null for degrees.</summary>
    public static readonly ImmutableSortedDictionary<string, double?> Units = new Dictionary<string, double?>
    {
        ["m"] = 1,
        ["dm"] = 0.1,
        ["cm"] = 0.01,
        ["mm"] = 0.001,
        ["ft"] = 0.3048,
        ["in"] = 0.0254,
        ["degrees"] = null,
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <summary>Reads it.</summary>
    /// <exception cref="InputException">The region is unknown.</exception>
    public static ImportOptions Read(ImportCommand shape, ParseResult parsed)
    {
        string? region = parsed.GetValue(shape.Region);
        if (region is not null && !Catalogues.Regions.Contains(region))
            throw new InputException($"error: --region: no region is called \"{region}\"; known regions: {string.Join(", ", Catalogues.Regions)}");
        return new()
        {
            MappingFile = parsed.GetValue(shape.Mapping),
            Length = parsed.GetValue(shape.Length),
            Ratio = parsed.GetValue(shape.Scale),
            MetresPerUnit = Units[parsed.GetValue(shape.Unit)!],
            SnapMetres = parsed.GetValue(shape.Snap),
            CurveMetres = parsed.GetValue(shape.Curve),
            WallsAreFaces = parsed.GetValue(shape.Faces),
            HomeName = parsed.GetValue(shape.HomeName),
            Region = region,
        };
    }
}
