using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Placement;
using MeshSim.Placement.Concessions;
using MeshSim.Quantities;

namespace MeshSim.Cli.Tables;

/// <summary>What stands in the way of a placement, and what giving in on one point would change.</summary>
internal static class ConcessionTables
{
    /// <summary>More obstacles are counted, not listed: JSON has them all.</summary>
    private const int MostObstacles = 8;

    /// <summary>The obstacles.</summary>
    public static Table Obstacles(Infeasibility infeasibility) => new(
        [new("Without a way"), new("When"), new("Nearest link"), new("Lacks dB", true), new("Others")],
        [
            .. infeasibility.Obstacles.Take(MostObstacles).Select(obstacle => (ImmutableArray<string>)
            [
                NameList.Short(obstacle.Devices),
                obstacle.Case == default(PlacementCase) ? "everyday" : RepeaterWords.When(obstacle.Case).Trim(),
                ConcessionWords.Link(obstacle),
                obstacle.Link is { } link ? Figures.Decibels(link.Shortfall) : "",
                ConcessionWords.Else(obstacle),
            ]),
        ])
    {
        Notes = infeasibility.Obstacles.Length <= MostObstacles
            ? []
            : [$"{Figures.Counted(infeasibility.Obstacles.Length - MostObstacles, "more obstacle")}: --json has them all."],
    };

    /// <summary>The concessions, the best first.</summary>
    public static Table Concessions(Infeasibility infeasibility, Decibels planned) => new(
        [new("Giving in on"), new("Without what is asked"), new("Repeaters", true), new("Kept on", true), new("Cost", true)],
        [
            .. infeasibility.Concessions.Select(concession => (ImmutableArray<string>)
            [
                ConcessionWords.Of(concession, planned),
                concession.Unserved.IsEmpty ? "nobody" : NameList.Short(concession.Unserved),
                Figures.Count(concession.Repeaters),
                Figures.Count(concession.KeptOn),
                Figures.Count(concession.Cost) + (concession.IsProven ? "" : " or less"),
            ]),
        ]);
}
