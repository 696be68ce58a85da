using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Placement;

namespace MeshSim.Cli.Tables;

/// <summary>The outlets of a home, and for which networks each was chosen.</summary>
internal static class OutletsTable
{
    /// <summary>The table of a home.</summary>
    public static Table Of(Home home, IEnumerable<RepeaterPlacement> placements)
    {
        ILookup<OutletId, string> chosen = placements
            .SelectMany(placement => placement.Repeaters.Select(repeater => (repeater.Outlet.Id, Network: placement.Network.Value)))
            .ToLookup(pair => pair.Id, pair => pair.Network);
        return new(
            [new("Outlet"), new("Where"), new("x m", true), new("y m", true), new("Height m", true), new("Circuit"), new("Repeater for")],
            [.. home.Outlets.Select(outlet => Row(outlet, chosen[outlet.Id]))]);
    }

    private static ImmutableArray<string> Row(Outlet outlet, IEnumerable<string> networks) =>
    [
        outlet.Id.Value + (outlet.IsAssumed ? " (assumed)" : ""),
        CoverageWords.Place(outlet.Storey, outlet.Room),
        Figures.Plain(outlet.Point.XMetres),
        Figures.Plain(outlet.Point.YMetres),
        Figures.Plain(outlet.HeightMetres),
        outlet.Circuit ?? "",
        string.Join(", ", networks),
    ];
}
