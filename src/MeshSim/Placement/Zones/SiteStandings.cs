using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Quantities;

namespace MeshSim.Placement.Zones;

/// <summary>Judges each outlet of a recommendation: what it has to spare, and what would be done without it.</summary>
public static class SiteStandings
{
    /// <summary>The standing of each recommended repeater, in the order of the recommendation.</summary>
    /// <param name="placement">The recommendation.</param>
    /// <param name="limit">The work to put into all proofs together.</param>
    public static ImmutableArray<SiteStanding> Of(SurveyedPlacement placement, WorkLimit? limit = null)
    {
        ArgumentNullException.ThrowIfNull(placement);
        ImmutableArray<int> repeaters = [.. placement.Chosen.Where(choice => choice < placement.Survey.Outlets.Length)];
        if (repeaters.IsEmpty) return [];
        WorkLimit each = (limit ?? new()).SharedBy(repeaters.Length);
        DemandSet asked = new(placement.Survey.Situations, placement.Ways);
        return [.. repeaters.Select(choice => Of(placement, choice, asked, each))];
    }

    /// <summary>
    /// By how much all links of the coordinator, as it stands and is mounted, could be weaker before somebody is lost whom the recommendation
    /// reaches; null when nobody needs it.
    /// </summary>
    /// <param name="placement">The recommendation.</param>
    public static Decibels? SpareOfHub(SurveyedPlacement placement)
    {
        ArgumentNullException.ThrowIfNull(placement);
        SiteDuties duties = SiteDuties.OfHub(placement);
        RepeaterProblem problem = placement.Survey.Problem;
        return duties.AreNone ? null : new(StrengthDb(placement.Survey, duties, problem.Coordinator) - problem.DesignMargin.Value);
    }

    private static SiteStanding Of(SurveyedPlacement placement, int choice, DemandSet asked, WorkLimit limit)
    {
        RepeaterSurvey survey = placement.Survey;
        SiteDuties duties = SiteDuties.OfRepeater(placement, choice);
        double designDb = survey.Problem.DesignMargin.Value;
        double strengthDb = StrengthDb(survey, duties, survey.Problem.NodeOf(choice));
        Outlet outlet = survey.Outlets[choice];
        return new(
            outlet,
            duties.AreNone ? null : new(strengthDb - designDb),
            InItsPlace(placement, duties, choice) ?? Without(placement, choice, asked, limit));
    }

    /// <summary>The outlet with most to spare of those that could stand in; the home's first among equals.</summary>
    private static NextBest? InItsPlace(SurveyedPlacement placement, SiteDuties duties, int choice)
    {
        RepeaterSurvey survey = placement.Survey;
        double designDb = survey.Problem.DesignMargin.Value;
        int[] others = [.. Enumerable.Range(0, survey.Outlets.Length).Where(other => !placement.Chosen.Contains(other) && HasPower(survey, duties, other))];
        if (duties.AreNone || others.Length == 0) return null;
        (int best, double strengthDb) = others.Select(other => (other, StrengthDb(survey, duties, survey.Problem.NodeOf(other)))).MaxBy(entry => entry.Item2);
        if (strengthDb < designDb) return null;
        ImmutableArray<int> instead = [.. placement.Chosen.Replace(choice, best).Order()];
        return new()
        {
            InItsPlace = survey.Outlets[best],
            Spare = new(strengthDb - designDb),
            Repeaters = survey.OutletsOf(instead),
            KeptOn = [.. survey.KeptOf(instead).Select(device => device.Id)],
            CostChange = 0,
            Fails = [],
        };
    }

    /// <summary>
    /// Everything is solved again without the outlet. Where as much can be had as with it, that is the same question with one choice less, and what bounded
    /// the cost before bounds it now.
    /// </summary>
    private static NextBest Without(SurveyedPlacement placement, int choice, DemandSet asked, WorkLimit limit)
    {
        RepeaterSurvey survey = placement.Survey;
        int site = survey.Problem.NodeOf(choice);
        ImmutableArray<int> costs = survey.CostsOf(placement.Home.Costs);
        ImmutableArray<Situation> without = [.. survey.Situations.Select(situation => situation with { WithoutPower = [.. situation.WithoutPower.Append(site).Distinct()] })];
        DemandSet after = new(without, placement.Ways);
        var known = asked.Undone.ToHashSet();
        ImmutableArray<UnmetDemand> fails = [.. after.Undone.Where(unmet => !known.Contains(unmet))];
        RepeaterSolution solution = RepeaterSolver.Solve(after, [.. costs], limit, fails.IsEmpty ? placement.CostBound : 0);
        RepeaterSurvey surveyed = survey with { Situations = without };
        return new()
        {
            Repeaters = survey.OutletsOf(solution.Outlets),
            KeptOn = [.. survey.KeptOf(solution.Outlets).Select(device => device.Id)],
            CostChange = solution.Cost - placement.Chosen.Sum(chosen => costs[chosen]),
            Fails =
            [
                .. fails.Where(unmet => unmet.Lost != site)
                    .Select(unmet => RepeaterAdvice.Lack(surveyed, placement.CaseNames with { Survey = surveyed }, unmet)),
            ],
            IsProven = solution.IsProven,
        };
    }

    private static bool HasPower(RepeaterSurvey survey, SiteDuties duties, int outlet) =>
        duties.Situations.All(situation => !survey.Situations[situation].WithoutPower.Contains(survey.Problem.NodeOf(outlet)));

    private static double StrengthDb(RepeaterSurvey survey, SiteDuties duties, int node)
    {
        return duties.StrengthDb([.. survey.Situations.Select(MarginsOf)]);

        double[] MarginsOf(Situation situation) =>
            [.. Enumerable.Range(0, situation.Problem.NodeCount).Select(other => situation.Problem.Margin(node, other).Value)];
    }
}
