using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Quantities;

namespace MeshSim.Placement.Robustness;

/// <summary>
/// The recommendation in a house that is dearer in every way: exponent, every construction, every mounting and the way round the walls
/// one standard deviation above what is computed, all at once.
/// </summary>
public sealed record PessimisticPlacement
{
    /// <summary>Where repeaters go then, in the home's order.</summary>
    public required ImmutableArray<Outlet> Repeaters { get; init; }

    /// <summary>Mains devices that stay powered then, in the home's order.</summary>
    public required ImmutableArray<DeviceId> KeptOn { get; init; }

    /// <summary>By how much that costs more than the recommendation, in the home's units.</summary>
    public required int CostChange { get; init; }

    /// <summary>Who cannot be served then and can be as computed, case by case.</summary>
    public required ImmutableArray<UnservedDevice> Fails { get; init; }

    /// <summary>Devices that the recommendation as it is loses then in some case, in the home's order.</summary>
    public required ImmutableArray<DeviceId> LostAsRecommended { get; init; }

    /// <summary>Whether the same is recommended.</summary>
    public required bool IsSame { get; init; }

    /// <summary>Whether it is proven that nothing cheaper does.</summary>
    public required bool IsProven { get; init; }
}

/// <summary>Solves the pessimistic case.</summary>
public static class PessimisticCase
{
    /// <summary>What would be recommended.</summary>
    /// <param name="placement">The recommendation as computed.</param>
    /// <param name="limit">The work to put into the proof.</param>
    public static PessimisticPlacement Solve(SurveyedPlacement placement, WorkLimit? limit = null)
    {
        ArgumentNullException.ThrowIfNull(placement);
        RepeaterSurvey survey = placement.Survey;
        RepeaterSurvey dearer = survey with { Situations = Dearer(placement) };
        ImmutableArray<int> costs = survey.CostsOf(placement.Home.Costs);
        DemandSet before = new(survey.Situations, placement.Ways), after = new(dearer.Situations, placement.Ways);
        RepeaterSolution solution = RepeaterSolver.Solve(after, [.. costs], limit ?? new());
        var known = before.Undone.ToHashSet();
        return new()
        {
            Repeaters = survey.OutletsOf(solution.Outlets),
            KeptOn = [.. survey.KeptOf(solution.Outlets).Select(device => device.Id)],
            CostChange = solution.Cost - placement.Chosen.Sum(choice => costs[choice]),
            Fails =
            [
                .. after.Undone.Where(unmet => !known.Contains(unmet))
                    .Select(unmet => RepeaterAdvice.Lack(dearer, placement.CaseNames with { Survey = dearer }, unmet)),
            ],
            LostAsRecommended = Lost(placement, placement with { Survey = dearer }),
            IsSame = solution.Outlets.SequenceEqual(placement.Chosen),
            IsProven = solution.IsProven,
        };
    }

    private static ImmutableArray<DeviceId> Lost(SurveyedPlacement placement, SurveyedPlacement dearer)
    {
        GraphsByMargin graphs = new();
        HashSet<int> lost = [];
        foreach ((Demand demand, _) in placement.Cases())
        {
            Demand then = demand with { Problem = dearer.Survey.Situations[demand.Situation].Problem };
            ReachGraph graph = graphs.Planned(then);
            lost.UnionWith(then.Reached(graph, graph.Chosen(placement.Chosen), isReached: false));
        }

        return [.. lost.Order().Select(device => placement.Survey.Devices[device].Id)];
    }

    private static ImmutableArray<Situation> Dearer(SurveyedPlacement placement)
    {
        MarginUncertainties uncertainties = new(placement.Home, placement.Network);
        Dictionary<RepeaterProblem, RepeaterProblem> known = [];
        return [.. placement.Survey.Situations.Zip(placement.Models, (situation, model) => situation with { Problem = Of(situation.Problem, model) })];

        RepeaterProblem Of(RepeaterProblem problem, IPathLossModel model)
        {
            if (!known.TryGetValue(problem, out RepeaterProblem? dearer)) known[problem] = dearer = Dearer(placement, problem, model, uncertainties);
            return dearer;
        }
    }

    private static RepeaterProblem Dearer(SurveyedPlacement placement, RepeaterProblem problem, IPathLossModel model, MarginUncertainties uncertainties)
    {
        return new(problem.Relays, problem.Coordinator, problem.OutletCount, problem.HopLimit, problem.DesignMargin, Margin);

        Decibels Margin(int a, int b) =>
            problem.Margin(a, b) - uncertainties.AllDearer(model.Between(placement.PlaceOf(a), placement.PlaceOf(b)), placement.MountingsOf(a, b));
    }
}
