using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Placement.Robustness;
using MeshSim.Placement.Zones;

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

    /// <summary>How likely each network keeps its promise then; empty when not asked.</summary>
    public required ImmutableArray<(NetworkName Network, GoalChances Chances)> Chances { get; init; }
}
