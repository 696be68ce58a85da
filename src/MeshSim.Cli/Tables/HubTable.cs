using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Placement;

namespace MeshSim.Cli.Tables;

/// <summary>The best sites of the hub, and where it is now.</summary>
internal static class HubTable
{
    /// <summary>The table.</summary>
    public static Table Of(HubPlacement hub)
    {
        bool keeps = hub.Sites.Any(site => KeptOn(site) > 0);
        return new(
            [
                new("No.", true), new("Site"), new("Where"), new("Cost", true), new("Repeaters", true), .. keeps ? [new Column("Kept on", true)] : Array.Empty<Column>(),
                new("No way", true), new("Not all", true), new("Weakest dB", true),
            ],
            [.. hub.Sites.Select((site, index) => Row(site, index, keeps))])
        {
            Notes =
            [
                "No way: devices without one everyday, whatever is plugged in. Not all: devices that have one, but not all that is asked. "
                    + "Weakest: the weakest link everyday with each device on its strongest way; routes goes by transmissions and may take another."
                    + (hub.Sites.All(site => site.IsProven) ? "" : " A cost with \"or less\" is not proven to be the least."),
                .. hub.Sites.Where(site => !site.DarkIn.IsEmpty).GroupBy(site => NameList.Spoken(site.DarkIn), StringComparer.Ordinal)
                    .Select(sites => $"No power at the hub in {sites.Key}: {string.Join(", ", sites.Select(Name))}. No device has a way then."),
                .. LeftOut(hub),
            ],
        };
    }

    private static ImmutableArray<string> Row(HubSite site, int index, bool keeps) =>
    [
        Figures.Count(index + 1),
        Name(site),
        site.Outlet is { } outlet ? CoverageWords.Place(outlet.Storey, outlet.Room) + (outlet.IsAssumed ? ", assumed" : "") : "",
        Figures.Count(site.Cost) + (site.IsProven ? "" : " or less"),
        Figures.Count(site.Repeaters),
        .. keeps ? [Figures.Count(KeptOn(site))] : Array.Empty<string>(),
        Figures.Count(site.OutOfReach),
        Figures.Count(site.Unserved - site.OutOfReach),
        site.WeakestMargin is { } margin ? Figures.Decibels(margin) : "",
    ];

    private static IEnumerable<string> LeftOut(HubPlacement hub)
    {
        if (hub.SitesLeftOut > 0)
        {
            yield return $"{Figures.Counted(hub.SitesLeftOut, "site")} might come before the last one listed: there are too many to work all of them out, so those "
                + "that promised most were. --room asks about fewer.";
        }

        if (hub.OutletsSwitchedOff > 0)
            yield return $"{Figures.Counted(hub.OutletsSwitchedOff, "outlet")} not considered: switched off in a state that need not hold here.";
    }

    private static string Name(HubSite site) => site.Outlet?.Id.Value ?? "(as now)";

    private static int KeptOn(HubSite site) => site.Networks.Sum(network => network.KeptOn.Length);
}
