using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Yaml;

namespace MeshSim.Files.Homes;

/// <summary>Reads what changes of a home cost.</summary>
internal static class CostReader
{
    /// <summary>Key of what a repeater costs.</summary>
    public const string Repeater = "repeater";

    /// <summary>Key of what moving the hub costs.</summary>
    public const string HubMove = "hub move";

    /// <summary>Key of what giving up a switch costs.</summary>
    public const string SwitchGivenUp = "switch given up";

    /// <summary>The costs; defaults where the home says nothing.</summary>
    public static PlacementCosts Read(MapReader home, DiagnosticList problems)
    {
        PlacementCosts defaults = new();
        if (home.Find("costs") is not { } node) return defaults;
        if (MapReader.Open(node, "the list of costs", problems, Repeater, HubMove, SwitchGivenUp) is not { } map) return defaults;
        return new()
        {
            Repeater = map.WholeNumber(Repeater, PlacementCosts.RepeaterUnits) ?? defaults.Repeater,
            HubMove = map.WholeNumber(HubMove, PlacementCosts.OtherUnits) ?? defaults.HubMove,
            SwitchGivenUp = map.WholeNumber(SwitchGivenUp, PlacementCosts.OtherUnits) ?? defaults.SwitchGivenUp,
        };
    }
}
