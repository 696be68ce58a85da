using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Yaml;

namespace MeshSim.Files.Homes;

/// <summary>Reads the states of <c>home.yaml</c>.</summary>
internal static class StateReader
{
    /// <summary>Reads every state.</summary>
    public static ImmutableArray<StateDocument> Read(MapReader home, DiagnosticList problems)
    {
        List<PlacedName> names = [];
        ImmutableArray<StateDocument>.Builder states = ImmutableArray.CreateBuilder<StateDocument>();
        foreach (YamlNode node in home.List("states"))
        {
            MapReader? map = MapReader.Open(node, "a state", problems, "state", "off", "circuits off", "switches off", "open", "must hold");
            if (map?.RequiredText("state") is not { } name) continue;
            names.Add(new(name, map.PlaceOf("state")));
            states.Add(new(name, map.Names("off"), map.Names("circuits off"), map.Names("switches off"), map.Names("open"), map.Flag("must hold")));
        }

        UniqueNames.Check(names, "state", problems);
        return states.ToImmutable();
    }
}
