using System.Collections.Immutable;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Json;

/// <summary>How firm the best site of a hub stands, as JSON.</summary>
internal sealed record HubReviewJson(ZoneJson Zone, ImmutableArray<NetworkChancesJson> Networks)
{
    /// <summary>The record of a review.</summary>
    public static HubReviewJson Of(HubReview review) =>
        new(ZoneJson.Of(review.Zone), [.. review.Chances.Select(entry => new NetworkChancesJson(entry.Network.Value, GoalChancesJson.Of(entry.Chances)))]);
}

/// <summary>How likely one network keeps its promise.</summary>
internal sealed record NetworkChancesJson(string Network, GoalChancesJson Chances);
