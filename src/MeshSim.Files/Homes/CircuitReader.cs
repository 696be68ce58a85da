using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Yaml;

namespace MeshSim.Files.Homes;

/// <summary>One circuit as described.</summary>
/// <param name="Circuit">The circuit.</param>
/// <param name="Place">Where its name stands.</param>
internal readonly record struct CircuitDocument(Circuit Circuit, SourcePlace Place);

/// <summary>Reads the circuits of <c>home.yaml</c>.</summary>
internal static class CircuitReader
{
    /// <summary>Reads every circuit.</summary>
    public static ImmutableArray<CircuitDocument> Read(MapReader home, DiagnosticList problems)
    {
        List<PlacedName> names = [];
        ImmutableArray<CircuitDocument>.Builder circuits = ImmutableArray.CreateBuilder<CircuitDocument>();
        foreach (YamlNode node in home.List("circuits"))
        {
            MapReader? map = MapReader.Open(node, "a circuit", problems, "circuit", "isolated at");
            string? name = map?.RequiredText("circuit"), isolatedAt = map?.RequiredText("isolated at");
            if (map is null || name is null) continue;
            names.Add(new(name, map.PlaceOf("circuit")));
            circuits.Add(new(new(name, isolatedAt ?? ""), map.PlaceOf("circuit")));
        }

        UniqueNames.Check(names, "circuit", problems);
        return circuits.ToImmutable();
    }
}
