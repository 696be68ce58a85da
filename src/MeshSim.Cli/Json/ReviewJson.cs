using System.Collections.Immutable;
using MeshSim.FloorPlans.Descriptions;
using MeshSim.Mesh.Reliability;
using MeshSim.Placement.Robustness;
using MeshSim.Placement.Zones;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Json;

/// <summary>How firm a recommendation stands, as JSON.</summary>
internal sealed record ReviewJson(ImmutableArray<SiteReviewJson> Sites, GoalChancesJson? Chances, PessimisticJson? Pessimistic)
{
    /// <summary>The record of a review.</summary>
    public static ReviewJson Of(PlacementReview review) => new(
        [.. review.Sites.Zip(review.Zones, SiteReviewJson.Of)],
        review.Chances is { } chances ? GoalChancesJson.Of(chances) : null,
        review.Pessimistic is { } pessimistic ? PessimisticJson.Of(pessimistic) : null);
}

/// <summary>One recommended outlet: what it has to spare, its zone, and what comes next.</summary>
internal sealed record SiteReviewJson(string Outlet, double? SpareDb, ZoneJson Zone, NextBestJson SecondBest)
{
    /// <summary>The record of a site.</summary>
    public static SiteReviewJson Of(SiteStanding site, SiteZone zone) => new(site.Outlet.Id.Value, site.Spare?.Value, ZoneJson.Of(zone), NextBestJson.Of(site.Next));
}

/// <summary>Where it does as well.</summary>
internal sealed record ZoneJson(double AreaSquareMetres, ImmutableArray<ZonePartJson> Parts)
{
    /// <summary>The record of a zone.</summary>
    public static ZoneJson Of(SiteZone zone) => new(
        zone.AreaSquareMetres,
        [.. zone.Parts.Select(part => new ZonePartJson(part.Storey.Value, part.Room?.Value, part.AreaSquareMetres, part.Share, part.Side, part.MostSpare.Value))]);
}

/// <summary>The part of a zone in one room.</summary>
internal sealed record ZonePartJson(string Storey, string? Room, double AreaSquareMetres, double Share, CompassSide? Side, double MostSpareDb);

/// <summary>What to do when an outlet cannot be used.</summary>
internal sealed record NextBestJson(
    string? InItsPlace, double? SpareDb, ImmutableArray<string> Repeaters, ImmutableArray<string> KeptOn, int CostChange, bool IsProven, ImmutableArray<UnservedJson> Fails)
{
    /// <summary>The record.</summary>
    public static NextBestJson Of(NextBest next) => new(
        next.InItsPlace?.Id.Value,
        next.Spare?.Value,
        JsonIds.Of(next.Repeaters),
        JsonIds.Of(next.KeptOn),
        next.CostChange,
        next.IsProven,
        [.. next.Fails.Select(UnservedJson.Of)]);
}

/// <summary>The recommendation if all losses were dearer by one standard deviation.</summary>
internal sealed record PessimisticJson(
    bool IsSame,
    ImmutableArray<string> Repeaters,
    ImmutableArray<string> KeptOn,
    int CostChange,
    bool IsProven,
    ImmutableArray<string> LostAsRecommended,
    ImmutableArray<UnservedJson> Fails)
{
    /// <summary>The record.</summary>
    public static PessimisticJson Of(PessimisticPlacement pessimistic) => new(
        pessimistic.IsSame,
        JsonIds.Of(pessimistic.Repeaters),
        JsonIds.Of(pessimistic.KeptOn),
        pessimistic.CostChange,
        pessimistic.IsProven,
        JsonIds.Of(pessimistic.LostAsRecommended),
        [.. pessimistic.Fails.Select(UnservedJson.Of)]);
}

/// <summary>How likely a recommendation keeps its promise.</summary>
internal sealed record GoalChancesJson(int Draws, ulong Seed, double Correlation, ChanceByJson Everyday, ChanceByJson Goal, ImmutableArray<DeviceShareJson> Devices)
{
    /// <summary>The record.</summary>
    public static GoalChancesJson Of(GoalChances chances) => new(
        chances.Options.Draws,
        chances.Options.Seed,
        chances.Options.Correlation,
        ChanceByJson.Of(chances.Everyday),
        ChanceByJson.Of(chances.Goal),
        [.. chances.Devices.Select(device => new DeviceShareJson(device.Device.Value, device.Probability, device.Interval.Low, device.Interval.High))]);
}

/// <summary>How often something held, by what was drawn.</summary>
internal sealed record ChanceByJson(ShareJson Shadowing, ShareJson Losses, ShareJson Both)
{
    /// <summary>The record.</summary>
    public static ChanceByJson Of(ChanceBy chance) => new(ShareJson.Of(chance.Shadowing), ShareJson.Of(chance.Losses), ShareJson.Of(chance.Both));
}

/// <summary>A share of draws, with its 95 % interval.</summary>
internal sealed record ShareJson(double Probability, double Low, double High)
{
    /// <summary>The record.</summary>
    public static ShareJson Of(DrawnShare share) => new(share.Probability, share.Interval.Low, share.Interval.High);
}

/// <summary>How often one device is reached, with its 95 % interval.</summary>
internal sealed record DeviceShareJson(string Device, double Probability, double Low, double High);
