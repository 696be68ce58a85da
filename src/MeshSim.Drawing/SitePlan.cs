using System.Collections.Immutable;
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
            Lines = [.. placement.Repeaters.Select((repeater, index) => FormattableString.Invariant($"{index + 1}  {repeater.Outlet.Id}, {Place(repeater.Outlet)}{ZoneOf(review, index)}"))],
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
            Lines = [.. hub.Sites.Select((site, index) => FormattableString.Invariant($"{index + 1}  {(site.Outlet is { } outlet ? outlet.Id.Value : "where it is now (C)")}: cost {site.Cost}{(site.Unserved > 0 ? FormattableString.Invariant($", {site.Unserved} unserved") : "")}"))],
            Sites = [.. hub.Sites.Select((site, index) => (site, index)).Where(entry => entry.site.Outlet is not null).Select(entry => new NumberedSite(entry.index + 1, entry.site.Outlet!))],
            Zones = review is null ? [] : [(1, review.Zone)],
            IsHub = true,
        };
    }

    /// <summary>Whether a storey has a site or a part of a zone.</summary>
    public bool Shows(StoreyName storey) =>
        Sites.Any(site => site.Outlet.Storey == storey) || Zones.Any(entry => entry.Zone.Parts.Any(part => part.Storey == storey));

    private static string Place(Outlet outlet) => outlet.Room is { } room ? $"{room.Value} ({outlet.Storey.Value})" : outlet.Storey.Value;

    private static string ZoneOf(PlacementReview review, int index) =>
        index < review.Zones.Length ? FormattableString.Invariant($": zone\u00A0{review.Zones[index].AreaSquareMetres:0}\u00A0m²") : "";
}
