using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Mesh;
using MeshSim.Studies;

namespace MeshSim.Cli.Tables;

/// <summary>How each device reaches the coordinator; those that do not come first.</summary>
internal static class RoutesTable
{
    /// <summary>The table of a coverage.</summary>
    public static Table Of(NetworkCoverage coverage) => new(
        [
            new("Device"), new("Way to the coordinator"), new("Margin dB", true), new("Holds %", true), new("Arrive %", true),
            new("95 % ms", true), new("Ways", true),
        ],
        [.. coverage.Devices.OrderBy(reach => reach.IsReached).Select(reach => Row(coverage, reach))])
    {
        Notes =
        [
            "Margin: of the weakest link on the way, ± one standard deviation. "
            + $"Holds: in how many of 100 houses of this plan every link of the way meets what its receiver needs{CoverageWords.FadingAside(coverage.Home.Parameters)}. "
            + "Arrive: commands from the coordinator that arrive, each link tried again as its radio does. "
            + "95 % ms: within how long 95 of 100 of those do, the last acknowledgement counted. "
            + "Ways: ways that share no router, so one can fail and the rest still work.",
        ],
    };

    /// <summary>A way in words, such as "direct" or "via a, b".</summary>
    public static string Way(Route route) =>
        route.Hops == 1 ? "direct" : "via " + string.Join(", ", route.Relays);

    private static ImmutableArray<string> Row(NetworkCoverage coverage, DeviceReach reach)
    {
        Route? route = reach.Route;
        RouteCertainty? sure = route is null ? null : RouteCertainty.Of(coverage.Links, route);
        return
        [
            $"{reach.Device} ({CoverageWords.Place(coverage.Home, reach.Device)})",
            route is null ? $"{CoverageWords.NoReliableWay}: {Shortfall.InWords(coverage, reach)}" : Way(route),
            sure is { } weakest ? Figures.Uncertain(weakest.Weakest.Margin, weakest.Weakest.Uncertainty) : "",
            sure is { } way ? Figures.Percent(way.Holds) : "",
            reach.Command is { } command ? Figures.Percent(command.Delivery) : "",
            reach.Command is { } slow ? Figures.Tenths(slow.P95Milliseconds) : "",
            Figures.Count(reach.DisjointRoutes),
        ];
    }
}
