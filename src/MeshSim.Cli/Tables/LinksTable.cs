using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Studies;

namespace MeshSim.Cli.Tables;

/// <summary>Who hears whom, with what margin, through what.</summary>
internal static class LinksTable
{
    /// <summary>The greatest obstacles are named, the rest are counted: a line must stay readable.</summary>
    private const int ObstaclesShown = 3;

    /// <summary>Obstacles that cost less than this are left out of the table, dB; JSON has them all.</summary>
    private const double LeastShownDb = 0.05;

    /// <summary>The table of some links of a coverage.</summary>
    public static Table Of(NetworkCoverage coverage, IEnumerable<Link> links)
    {
        ImmutableArray<Link> shown = [.. links];
        bool extrapolated = shown.Any(link => link.PathLoss.Items.Any(item => item.IsExtrapolated));
        return new(
            [new("Between"), new("m", true), new("Loss dB", true), new("Margin dB", true), new("Holds %", true), new("Link"), new("Through (dB each)")],
            [.. shown.Select(link => Row(coverage, link))])
        {
            Notes =
            [
                "Margin: how far the weaker direction lies above the weakest usable level. "
                + $"Good from {coverage.DesignMargin} on: only good links are planned with.",
                CoverageWords.Uncertainty(coverage.Home.Parameters),
                .. extrapolated ? ["* A material used outside the frequencies at which it was measured."] : ImmutableArray<string>.Empty,
            ],
        };
    }

    /// <summary>Whether the two hear each other at all.</summary>
    public static bool IsHeard(Link link) => link.Margin.Value >= 0;

    private static bool IsSaving(LossItem item) => item.Kind == LossKind.Detour && item.Loss.Value <= -LeastShownDb;

    private static ImmutableArray<string> Row(NetworkCoverage coverage, Link link) =>
    [
        $"{link.From} – {link.To}",
        Figures.Tenths(link.PathLoss.DistanceMetres),
        Figures.Decibels(link.PathLoss.Total),
        Figures.Uncertain(link.Margin, link.Uncertainty),
        Figures.Percent(link.Holds),
        link.Margin >= coverage.DesignMargin ? "good" : IsHeard(link) ? "weak" : "none",
        Through(link.PathLoss),
    ];

    private static string Through(PathLoss loss)
    {
        LossItem[] obstacles =
        [
            .. loss.Items
                .Where(item => item.Kind != LossKind.Distance && item.Loss.Value >= LeastShownDb)
                .OrderByDescending(item => item.Loss.Value),
        ];
        if (obstacles.Length == 0) return "air alone";

        IEnumerable<string> named = obstacles.Take(ObstaclesShown)
            .Select(item => $"{item.Name} {Figures.Decibels(item.Loss)}{(item.IsExtrapolated ? "*" : "")}");
        int more = obstacles.Length - ObstaclesShown;
        if (more > 0) named = named.Append(FormattableString.Invariant($"{more} more"));
        return string.Join("; ", named.Concat(loss.Items.Where(IsSaving).Select(item => $"{item.Name} {Figures.Decibels(item.Loss)}")));
    }
}
