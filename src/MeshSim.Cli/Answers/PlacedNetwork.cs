using MeshSim.Placement;
using MeshSim.Placement.Concessions;
using MeshSim.Placement.Robustness;
using MeshSim.Studies;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Answers;

/// <summary>Where repeaters should go in one network.</summary>
/// <param name="Coverage">Links and routes.</param>
/// <param name="Placement">The recommendation.</param>
/// <param name="Review">How firm it stands.</param>
/// <param name="Ladder">What each repeater buys; null when not asked, or where there is none to climb.</param>
/// <param name="Infeasible">What stands in the way of the rest; null when all that is asked is had.</param>
internal sealed record PlacedNetwork(
    NetworkCoverage Coverage, RepeaterPlacement Placement, PlacementReview Review, RepeaterLadder? Ladder, Infeasibility? Infeasible)
{
    /// <summary>Asks everything about one network.</summary>
    /// <param name="coverage">Links and routes.</param>
    /// <param name="options">Model, state, goals.</param>
    /// <param name="chance">How it is tried against chance.</param>
    /// <param name="rungs">How high the ladder goes; null for none.</param>
    /// <param name="step">Told each step as it begins.</param>
    public static PlacedNetwork Of(NetworkCoverage coverage, StudyOptions options, RobustnessOptions chance, int? rungs, Action<string> step)
    {
        RepeaterPlacement placement = CoverageStudy.Repeaters(coverage, options);
        step($"Zones and chances of {coverage.Network.Name}");
        PlacementReview review = ReviewStudy.Repeaters(coverage, placement, chance);
        RepeaterLadder? ladder = rungs is { } most ? LadderStudy.Run(coverage, most, options) : null;
        if (!placement.ServesAll) step($"Trying what giving in would change for {coverage.Network.Name}");
        return new(coverage, placement, review, ladder, placement.ServesAll ? null : ConcessionStudy.Run(coverage, options));
    }
}
