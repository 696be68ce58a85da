using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Mesh;
using MeshSim.Studies;

namespace MeshSim.Cli.Tables;

/// <summary>How each device reaches the coordinator and what is left when that fails, in one table; those without a way come first.</summary>
internal static class WaysTable
{
    /// <summary>The table of a coverage.</summary>
    public static Table Of(NetworkCoverage coverage) => new(
        [
            new("Device"), new("Where"), new("Way to the coordinator"), new("Margin dB", true), new("Arrive %", true), new("95 % ms", true),
            new("Second way"), new("Margin dB", true),
        ],
        [.. coverage.Devices.OrderBy(reach => reach.IsReached).ThenBy(reach => reach.SecondRoute is not null).Select(reach => Row(coverage, reach))])
    {
        Notes =
        [
            "Margin: of the weakest link on the way. Arrive: commands from the coordinator that arrive, each link tried again as its radio does. "
            + "95 % ms: within how long 95 of 100 of those do, the last acknowledgement counted. Second way: shares no router with the first.",
        ],
    };

    private static ImmutableArray<string> Row(NetworkCoverage coverage, DeviceReach reach)
    {
        Route? route = reach.Route, second = reach.SecondRoute;
        return
        [
            reach.Device.Value,
            CoverageWords.Place(coverage.Home, reach.Device),
            route is null ? $"{CoverageWords.NoReliableWay}: {Shortfall.InWords(coverage, reach)}" : RoutesTable.Way(route),
            route is null ? "" : Figures.Decibels(route.WeakestMargin),
            reach.Command is { } command ? Figures.Percent(command.Delivery) : "",
            reach.Command is { } slow ? Figures.Tenths(slow.P95Milliseconds) : "",
            second is not null ? RoutesTable.Way(second) : route is null ? "" : SecondWaysTable.NoSecond(reach),
            second is null ? "" : Figures.Decibels(second.WeakestMargin),
        ];
    }
}
