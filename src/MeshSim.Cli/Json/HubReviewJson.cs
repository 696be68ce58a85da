using System.Collections.Immutable;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Json;

/// <summary>How firm the best site of a hub stands, as JSON.</summary>
internal sealed record HubReviewJson(
    double? SpareDb, ZoneJson Zone, ImmutableArray<HubNetworkReviewJson> Networks, HubSiteJson? PessimisticBest, HubSiteJson? PessimisticHere)
{
    /// <summary>The record of a review.</summary>
    public static HubReviewJson Of(HubReview review) => new(
        review.Spare?.Value,
        ZoneJson.Of(review.Zone),
        [.. review.Networks.Select(HubNetworkReviewJson.Of)],
        review.Sites is { } sites ? HubSiteJson.Of(sites.Best) : null,
        review.Sites is { } same ? HubSiteJson.Of(same.AsRecommended) : null);
}

/// <summary>How firm one network stands there.</summary>
internal sealed record HubNetworkReviewJson(string Network, double? SpareDb, GoalChancesJson? Chances, PessimisticJson Pessimistic)
{
    /// <summary>The record of a network.</summary>
    public static HubNetworkReviewJson Of(HubNetworkReview network) => new(
        network.Network.Value,
        network.Spare?.Value,
        network.Chances is { } chances ? GoalChancesJson.Of(chances) : null,
        PessimisticJson.Of(network.Pessimistic));
}
