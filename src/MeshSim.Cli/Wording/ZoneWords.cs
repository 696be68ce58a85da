using System.Collections.Immutable;
using MeshSim.FloorPlans.Descriptions;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Wording;

/// <summary>A zone in words.</summary>
internal static class ZoneWords
{
    /// <summary>More parts than this are counted, not named.</summary>
    private const int MostNamed = 3;

    /// <summary>What lies within a grid point of all or half of a room is called so.</summary>
    private const double All = 0.97, MoreThanHalf = 0.6, Half = 0.4;

    /// <summary>Less than this of a room is no end of it: whoever takes any outlet there would mostly miss the zone.</summary>
    private const double Little = 0.15;

    /// <summary>Where a repeater does as well, such as "Any outlet in the east half of loft room does as well (14 m²)."</summary>
    public static string Of(SiteZone zone) => zone.Parts.IsEmpty
        ? "Nowhere but at this outlet does it do as well."
        : $"Any outlet in {Places(zone)} does as well ({Area(zone.AreaSquareMetres)}).";

    /// <summary>Where the hub does as well.</summary>
    public static string OfHub(SiteZone zone) => zone.Parts.IsEmpty
        ? "With the same repeaters, nowhere else does the hub do as well."
        : $"With the same repeaters, the hub does as well anywhere in {Places(zone)} ({Area(zone.AreaSquareMetres)}).";

    /// <summary>A part of a zone, such as "the east half of loft room".</summary>
    public static string PartOf(ZonePart part)
    {
        string room = part.Room?.Value ?? $"storey {part.Storey}";
        string? side = part.Side is { } to ? NameOf(to) : null;
        return part.Share switch
        {
            >= All => $"all of {room}",
            >= MoreThanHalf => side is null ? $"most of {room}" : $"most of {room}, more to its {side}",
            >= Half => side is null ? $"half of {room}" : $"the {side} half of {room}",
            >= Little => side is null ? $"some of {room}" : $"the {side} end of {room}",
            _ => side is null ? $"a small part of {room}" : $"a small part of the {side} end of {room}",
        };
    }

    private static string Places(SiteZone zone)
    {
        ImmutableArray<ZonePart> largest = [.. zone.Parts.OrderByDescending(part => part.AreaSquareMetres)];
        string[] named = [.. largest.Take(MostNamed).Select(PartOf)];
        return largest.Length > MostNamed
            ? $"{string.Join("; ", named)}; or parts of {Figures.Counted(largest.Length - MostNamed, "other room")}"
            : named.Length == 1 ? named[0] : $"{string.Join("; ", named[..^1])}; or {named[^1]}";
    }

    private static string Area(double areaSquareMetres) => areaSquareMetres < 1
        ? FormattableString.Invariant($"{areaSquareMetres:0.0} m²")
        : FormattableString.Invariant($"{areaSquareMetres:0} m²");

    private static string NameOf(CompassSide side) => side switch
    {
        CompassSide.North => "north",
        CompassSide.East => "east",
        CompassSide.South => "south",
        _ => "west",
    };
}
