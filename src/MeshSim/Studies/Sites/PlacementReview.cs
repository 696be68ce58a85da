using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Placement.Robustness;
using MeshSim.Placement.Zones;
using MeshSim.Quantities;

namespace MeshSim.Studies.Sites;

/// <summary>How firm a recommendation of repeaters stands.</summary>
public sealed record PlacementReview
{
    /// <summary>Nothing to say: nothing was chosen.</summary>
    public static readonly PlacementReview Nothing = new() { Sites = [], Zones = [] };

    /// <summary>Each recommended repeater: what it has to spare and what comes next, in the order of the recommendation.</summary>
    public required ImmutableArray<SiteStanding> Sites { get; init; }

    /// <summary>Where each of them could stand as well, in the same order.</summary>
    public required ImmutableArray<SiteZone> Zones { get; init; }

    /// <summary>How likely the recommendation keeps its promise; null when not asked.</summary>
    public GoalChances? Chances { get; init; }

    /// <summary>What would be recommended if all losses were dearer; null when not asked.</summary>
    public PessimisticPlacement? Pessimistic { get; init; }
}

/// <summary>How firm the best site of a hub stands.</summary>
public sealed record HubReview
{
    /// <summary>Where the hub could stand as well, with the same repeaters.</summary>
    public required SiteZone Zone { get; init; }

    /// <summary>What each network has to spare with the hub there, in the order of the recommendation.</summary>
    public required ImmutableArray<HubNetworkReview> Networks { get; init; }

    /// <summary>Where the hub should go in the pessimistic case; null when not asked, and where the sites are too many.</summary>
    public PessimisticHub? Sites { get; init; }

    /// <summary>By how much all links of the hub could be weaker before a network loses somebody; null when nobody needs it.</summary>
    public Decibels? Spare => Networks.Min(network => network.Spare?.Value) is { } spareDb ? new(spareDb) : null;
}

/// <summary>How firm one network stands with the hub at its best site.</summary>
/// <param name="Network">The network.</param>
/// <param name="Spare">By how much all links of its coordinator could be weaker before somebody is lost; null when nobody needs it.</param>
/// <param name="Chances">How likely it keeps its promise; null when not asked.</param>
/// <param name="Pessimistic">What it would need there if all losses were dearer.</param>
public sealed record HubNetworkReview(NetworkName Network, Decibels? Spare, GoalChances? Chances, PessimisticPlacement Pessimistic);

/// <summary>Where the hub should go if every loss were one standard deviation dearer.</summary>
/// <param name="Best">The best site then.</param>
/// <param name="AsRecommended">The site recommended for losses as computed, as it is then.</param>
public sealed record PessimisticHub(HubSite Best, HubSite AsRecommended)
{
    /// <summary>Whether another site is better then: it leaves fewer devices out, or costs less.</summary>
    public bool IsOther => Best.Score.Rank.CompareTo(AsRecommended.Score.Rank) < 0;
}
