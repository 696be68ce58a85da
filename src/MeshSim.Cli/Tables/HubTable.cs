using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Placement;

namespace MeshSim.Cli.Tables;

/// <summary>The best sites of the hub, and where it is now.</summary>
internal static class HubTable
{
    /// <summary>The table.</summary>
    public static Table Of(HubPlacement hub) => new(
        [
            new("Site"), new("Where"), new("Cost", true), new("Repeaters", true), new("Kept on", true), new("Unserved", true),
            new("Weakest dB", true), new("Repeaters go to"),
        ],
        [.. hub.Sites.Select(Row)])
    {
        Notes =
        [
            "Unserved: devices that cannot have all that is asked, whatever is plugged in. Weakest: margin of the weakest link on the weakest everyday route."
                + (hub.Sites.All(site => site.IsProven) ? "" : " A cost with \"or less\" is not proven to be the least."),
        ],
    };

    private static ImmutableArray<string> Row(HubSite site) =>
    [
        site.Outlet?.Id.Value ?? "(as now)",
        site.Outlet is { } outlet ? CoverageWords.Place(outlet.Storey, outlet.Room) + (outlet.IsAssumed ? ", assumed" : "") : "",
        Figures.Count(site.Cost) + (site.IsProven ? "" : " or less"),
        Figures.Count(site.Repeaters),
        Figures.Count(site.Networks.Sum(network => network.KeptOn.Length)),
        Figures.Count(site.Unserved),
        site.WeakestMargin is { } margin ? Figures.Decibels(margin) : "",
        string.Join("; ", site.Networks.Where(network => !network.Repeaters.IsEmpty)
            .Select(network => $"{network.Network}: {string.Join(", ", network.Repeaters.Select(repeater => repeater.Id))}")),
    ];
}
