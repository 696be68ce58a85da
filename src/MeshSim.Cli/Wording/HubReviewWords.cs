using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Wording;

/// <summary>How firm the best site of a hub stands, in sentences.</summary>
internal static class HubReviewWords
{
    /// <summary>The zone, then the chances of each network.</summary>
    public static IEnumerable<string> Of(HubReview review) =>
        review.Chances.Select(entry => $"{entry.Network}: {ReviewWords.Chance(entry.Chances)}").Prepend(ZoneWords.OfHub(review.Zone));
}
