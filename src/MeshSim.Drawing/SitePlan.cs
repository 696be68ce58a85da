using System.Collections.Immutable;
using System.Globalization;
using MeshSim.Devices;
using MeshSim.Drawing.Symbols;
using MeshSim.FloorPlans;
using MeshSim.Placement;
using MeshSim.Studies.Sites;

namespace MeshSim.Drawing;

/// <summary>Sites to be drawn: numbered, with the zones in which they do as well.</summary>
public sealed record SitePlan
{
    /// <summary>What the sheet is about, such as "repeaters of plugs".</summary>
    public required string Title { get; init; }

    /// <summary>The answer in a few words.</summary>
    public required string Heading { get; init; }

    /// <summary>One line for each site.</summary>
    public required ImmutableArray<string> Lines { get; init; }

    /// <summary>What words of the lines mean; empty where they speak for themselves.</summary>
    public string Note { get; init; } = "";

    /// <summary>The numbered outlets.</summary>
    public required ImmutableArray<NumberedSite> Sites { get; init; }

    /// <summary>The zones by the number of their site.</summary>
    public required ImmutableArray<(int Number, SiteZone Zone)> Zones { get; init; }

    /// <summary>Whether the sites are those of a hub, else repeaters.</summary>
    public bool IsHub { get; init; }

    /// <summary>Recommended repeaters and their zones.</summary>
    /// <param name="placement">The recommendation.</param>
    /// <param name="review">How firm it stands.</param>
    public static SitePlan Of(RepeaterPlacement placement, PlacementReview review)
    {
        ArgumentNullException.ThrowIfNull(placement);
        ArgumentNullException.ThrowIfNull(review);
        int count = placement.Repeaters.Length;
        return new()
        {
            Title = $"repeaters of network {placement.Network}",
            Heading = count == 0 ? "No repeater recommended" : FormattableString.Invariant($"Add {count} repeater{(count == 1 ? "" : "s")}"),
            Lines = [.. placement.Repeaters.Select((repeater, index) => Line(repeater.Outlet, index + 1, review))],
            Sites = [.. placement.Repeaters.Select((repeater, index) => new NumberedSite(index + 1, repeater.Outlet))],
            Zones = [.. review.Zones.Select((zone, index) => (index + 1, zone))],
        };
    }

    /// <summary>The ranked sites of a hub, and the zone of the best.</summary>
    /// <param name="hub">The recommendation.</param>
    /// <param name="review">How firm the best stands; null when unknown.</param>
    public static SitePlan Of(HubPlacement hub, HubReview? review)
    {
        ArgumentNullException.ThrowIfNull(hub);
        return new()
        {
            Title = "sites of the hub",
            Heading = hub.Best.Outlet is { } best ? $"Move the hub to {best.Id}" : "Leave the hub where it is",
            Lines = [.. hub.Sites.Select((site, index) => Line(site, index + 1))],
            Note = NoteOn(hub.Sites),
            Sites =
            [
                .. hub.Sites.Select((site, index) => (site.Outlet, Number: index + 1))
                    .Where(entry => entry.Outlet is not null).Select(entry => new NumberedSite(entry.Number, entry.Outlet!)),
            ],
            Zones = review is null ? [] : [(1, review.Zone)],
            IsHub = true,
        };
    }

    /// <summary>Whether a storey has a site or a part of a zone.</summary>
    public bool Shows(StoreyName storey) =>
        Sites.Any(site => site.Outlet.Storey == storey) || Zones.Any(entry => entry.Zone.Parts.Any(part => part.Storey == storey));

    private static string Line(Outlet outlet, int number, PlacementReview review)
    {
        string zone = number > review.Zones.Length ? "" : $": zone\u00A0{Area(review.Zones[number - 1].AreaSquareMetres)}\u00A0m²";
        return FormattableString.Invariant($"{number}  {outlet.Id}, {Place(outlet)}{zone}");
    }

    /// <summary>What a site costs and whom it leaves out, in the words of the columns of the table.</summary>
    private static string Line(HubSite site, int number)
    {
        string where = site.Outlet?.Id.Value ?? "where it is now (C)";
        int notAll = site.Unserved - site.OutOfReach;
        return FormattableString.Invariant($"{number}  {where}: cost {site.Cost}")
            + (site.IsProven ? "" : " or less")
            + (site.OutOfReach > 0 ? FormattableString.Invariant($", {site.OutOfReach}\u00A0no\u00A0way") : "")
            + (notAll > 0 ? FormattableString.Invariant($", {notAll}\u00A0not\u00A0all") : "");
    }

    private static string NoteOn(ImmutableArray<HubSite> sites)
    {
        string noWay = sites.Any(site => site.OutOfReach > 0) ? "no way: devices without one everyday, whatever is plugged in" : "";
        string notAll = sites.Any(site => site.Unserved > site.OutOfReach) ? "not all: devices with a way, but not all that is asked" : "";
        return noWay.Length > 0 && notAll.Length > 0 ? $"{noWay}; {notAll}" : noWay + notAll;
    }

    private static string Place(Outlet outlet) => outlet.Room is { } room ? $"{room.Value} ({outlet.Storey.Value})" : outlet.Storey.Value;

    /// <summary>As the sentences round it: tenths where whole square metres would say little.</summary>
    private static string Area(double squareMetres) => squareMetres.ToString(squareMetres < 1 ? "0.0" : "0", CultureInfo.InvariantCulture);
}
