using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Wording;

/// <summary>How firm the best site of a hub stands, in sentences.</summary>
internal static class HubReviewWords
{
    /// <summary>What is to spare at the site, and where else it would do.</summary>
    public static string Zone(HubReview review) =>
        (review.Spare is { } spare ? $"At the best site the links of the hub have {Figures.Decibels(spare)} dB to spare. " : "") + ZoneWords.OfHub(review.Zone);

    /// <summary>The pessimistic case of each network; those of which the same is said are named together. Then what it leaves open.</summary>
    public static IEnumerable<string> Pessimistic(HubReview review)
    {
        IEnumerable<string> told = review.Networks.GroupBy(network => ReviewWords.Pessimistic(network.Pessimistic), StringComparer.Ordinal)
            .Select(same => $"{NameList.Spoken([.. same.Select(network => network.Network.Value)])}: {same.Key}");
        bool isSame = review.Networks.All(network => network.Pessimistic is { IsSame: true, LostAsRecommended.IsEmpty: true });
        return review.Sites switch
        {
            { IsOther: true } sites => told.Append($"In that case the hub is better {HubWords.PlaceOf(sites.Best)}: {HubWords.Needs(sites.Best)}. At the site "
                + $"recommended here it is then {HubWords.Needs(sites.AsRecommended)}."),
            _ when isSame => told,
            { } => told.Append("No other site of the hub is better in that case."),
            null => told.Append("All of that with the hub at the best site; whether another site would then be better is not worked out for so many."),
        };
    }
}
