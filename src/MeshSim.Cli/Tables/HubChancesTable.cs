using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Placement.Robustness;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Tables;

/// <summary>How likely each network keeps its promise with the hub at its best site.</summary>
internal static class HubChancesTable
{
    /// <summary>The table.</summary>
    public static Table Of(HubReview review) => new(
        [new("Network"), new("All works"), new("As computed", true), new("Margin left", true), new("Least likely everyday")],
        [
            .. Drawn(review).Select(entry => ImmutableArray.Create(
                entry.Network.Value,
                ReviewWords.WithInterval(entry.Chances.Goal.Both),
                ReviewWords.Percent(entry.Chances.Goal.Shadowing.Probability),
                ReviewWords.Percent(entry.Chances.Goal.Losses.Probability),
                ReviewWords.Doubtful(entry.Chances))),
        ])
    {
        Notes =
        [
            "All works: in so many houses of this plan all that can be had works at once; as computed: if losses are just as computed; "
            + $"margin left: with the whole design margin left. {ReviewWords.Draws(Drawn(review).First().Chances.Options)}.",
        ],
    };

    private static IEnumerable<(NetworkName Network, GoalChances Chances)> Drawn(HubReview review) =>
        review.Networks.Where(network => network.Chances is not null).Select(network => (network.Network, network.Chances!));
}
