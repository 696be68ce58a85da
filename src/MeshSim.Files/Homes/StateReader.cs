using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Yaml;

namespace MeshSim.Files.Homes;

/// <summary>Reads the states of <c>home.yaml</c>.</summary>
internal static class StateReader
{
    private static readonly string[] Changes = ["off", "circuits off", "switches off", "open"];

    /// <summary>Reads every state.</summary>
    public static ImmutableArray<StateDocument> Read(MapReader home, DiagnosticList problems)
    {
        List<PlacedName> names = [];
        ImmutableArray<StateDocument>.Builder states = ImmutableArray.CreateBuilder<StateDocument>();
        foreach (YamlNode node in home.List("states"))
        {
            MapReader? map = MapReader.Open(node, "a state", problems, ["state", .. Changes, "must hold"]);
            if (map?.RequiredText("state") is not { } name) continue;
            names.Add(new(name, map.PlaceOf("state")));
            if (ChangesNothing(map))
            {
                problems.Notice(
                    map.PlaceOf("state"),
                    $"the state {KnownNames.Quote(name)} turns nothing off and opens nothing",
                    "that it holds says nothing: name what is off or open in it");
            }

            states.Add(new(name, map.Names("off"), map.Names("circuits off"), map.Names("switches off"), map.Names("open"), map.Flag("must hold")));
        }

        UniqueNames.Check(names, "state", problems);
        return states.ToImmutable();
    }

    private static bool ChangesNothing(MapReader state) =>
        Array.TrueForAll(Changes, key => state.Find(key) is null or YamlList { Items.IsEmpty: true });
}
