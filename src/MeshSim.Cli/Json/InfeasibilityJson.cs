using System.Collections.Immutable;
using MeshSim.Placement.Concessions;

namespace MeshSim.Cli.Json;

/// <summary>Why not everything that was asked can be had, as JSON.</summary>
internal sealed record InfeasibilityJson(ImmutableArray<string> Devices, ImmutableArray<ObstacleJson> Obstacles, ImmutableArray<ConcessionJson> Concessions)
{
    /// <summary>The record of an answer.</summary>
    public static InfeasibilityJson Of(Infeasibility infeasibility) => new(
        JsonIds.Of(infeasibility.Devices),
        [.. infeasibility.Obstacles.Select(ObstacleJson.Of)],
        [.. infeasibility.Concessions.Select(ConcessionJson.Of)]);
}

/// <summary>The link that keeps devices from what was asked, everyday where neither state nor lost router is named.</summary>
internal sealed record ObstacleJson(
    string? State, string? Lost, ImmutableArray<string> Devices, ShortLinkJson? Link, int LinksThatWouldDo, int? Hops)
{
    /// <summary>The record of an obstacle.</summary>
    public static ObstacleJson Of(Obstacle obstacle) => new(
        obstacle.Case.State,
        obstacle.Case.Lost,
        JsonIds.Of(obstacle.Devices),
        obstacle.Link is { } link ? new(link.From, link.To, link.Shortfall.Value) : null,
        obstacle.LinksThatWouldDo,
        obstacle.Hops);
}

/// <summary>A link below the design margin.</summary>
internal sealed record ShortLinkJson(string From, string To, double ShortfallDb);

/// <summary>What giving in on one point comes to; null for what stays as it was asked.</summary>
internal sealed record ConcessionJson(
    ConcessionKind Kind,
    ImmutableArray<string> Doubled,
    ImmutableArray<string> Beside,
    string? State,
    double? DesignMarginDb,
    double? Availability,
    bool IsAdvisable,
    int? HopLimit,
    bool IsBeyondRadio,
    string? Network,
    ImmutableArray<string> Moved,
    ImmutableArray<string> Unserved,
    int Repeaters,
    int KeptOn,
    int Cost,
    bool IsProven)
{
    /// <summary>The record of a concession.</summary>
    public static ConcessionJson Of(Concession concession) => new(
        concession.Kind,
        [.. concession.Doubled.Select(outlet => outlet.Value)],
        JsonIds.Of(concession.Beside),
        concession.State,
        concession.DesignMargin?.Value,
        concession.Availability,
        concession.IsAdvisable,
        concession.HopLimit,
        concession.IsBeyondRadio,
        concession.Network?.Value,
        JsonIds.Of(concession.Moved),
        JsonIds.Of(concession.Unserved),
        concession.Repeaters,
        concession.KeptOn,
        concession.Cost,
        concession.IsProven);
}
