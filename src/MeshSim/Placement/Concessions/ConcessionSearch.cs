using System.Collections.Immutable;
using MeshSim.Quantities;

namespace MeshSim.Placement.Concessions;

/// <summary>Solves a repeater problem again with one point given in.</summary>
/// <param name="Situations">Everyday first.</param>
/// <param name="Ways">How many ways were asked for.</param>
/// <param name="Costs">Per choice what it costs.</param>
internal sealed record ConcessionSearch(ImmutableArray<Situation> Situations, int Ways, ImmutableArray<int> Costs)
{
    /// <summary>What counts as a little less margin.</summary>
    public static readonly Decibels Less = new(2);

    // What is wanted is a number, not which of several equal choices.
    private static readonly WorkLimit Limit = new() { RelaxationsForTies = 0 };

    private RepeaterProblem Everyday => Situations[0].Problem;

    /// <summary>Everything as it was asked.</summary>
    public RepeaterSolution AsAsked() => Solve(Situations, Ways);

    /// <summary>One way instead of two.</summary>
    public RepeaterSolution OneWay() => Solve(Situations, 1);

    /// <summary>Without one of the states.</summary>
    /// <param name="situation">Its place, 1 or more.</param>
    public RepeaterSolution Without(int situation) => Solve(Situations.RemoveAt(situation), Ways);

    /// <summary>With another hop limit.</summary>
    public RepeaterSolution WithHopLimit(int hopLimit) => Under(hopLimit, Everyday.DesignMargin);

    /// <summary>With another design margin.</summary>
    public RepeaterSolution WithMargin(Decibels designMargin) => Under(Everyday.HopLimit, designMargin);

    /// <summary>
    /// With room for two repeaters at some outlets. Where that costs no more only the outlets take two on which somebody hangs: they must
    /// whatever else is chosen.
    /// </summary>
    /// <param name="outlets">The choices that are outlets with room for two, in order.</param>
    /// <param name="asked">The answer to what was asked.</param>
    /// <returns>The least costly choice; an outlet that takes two is in it twice.</returns>
    public RepeaterSolution WithTwoAtAnOutlet(ImmutableArray<int> outlets, RepeaterSolution asked)
    {
        ImmutableArray<int> hungOn = HungOn(asked);
        RepeaterSolution anywhere = new TwinOutlets(Situations, Costs, outlets).Solve(Ways, Limit);
        if (hungOn.SequenceEqual(Doubled(anywhere))) return anywhere;
        RepeaterSolution there = new TwinOutlets(Situations, Costs, hungOn).Solve(Ways, Limit);
        return there.Cost <= anywhere.Cost ? there with { LowerBound = anywhere.LowerBound } : anywhere;
    }

    /// <summary>The outlets whose loss somebody does not survive, in order.</summary>
    public ImmutableArray<int> HungOn(RepeaterSolution solution) =>
    [
        .. solution.Unmet.Where(entry => entry.Lost >= Everyday.DeviceCount).Select(entry => entry.Lost!.Value - Everyday.DeviceCount).Distinct().Order(),
    ];

    /// <summary>The outlets that are chosen twice, in order.</summary>
    public static ImmutableArray<int> Doubled(RepeaterSolution solution) =>
        [.. solution.Outlets.GroupBy(outlet => outlet).Where(group => group.Count() > 1).Select(group => group.Key)];

    /// <summary>
    /// With the greatest design margin at which everything can be had; null where that is below 0. A device without a way is asked
    /// about losses only once it has one, so a margin that gives everybody a way may still leave second ways out.
    /// </summary>
    /// <param name="undone">What cannot be had with the design margin as it is.</param>
    public (Decibels Margin, RepeaterSolution Solution)? WithLeastMargin(ImmutableArray<UnmetDemand> undone)
    {
        while (ObstacleFinder.LeastMargin(Situations, undone) is var margin && margin >= Decibels.Zero)
        {
            RepeaterSolution solution = WithMargin(margin);
            undone = [.. solution.Undone];
            if (undone.IsEmpty) return (margin, solution);
        }

        return null;
    }

    private RepeaterSolution Under(int hopLimit, Decibels designMargin)
    {
        // Situations with the same doors share their problem, and must go on sharing it.
        Dictionary<RepeaterProblem, RepeaterProblem> changed =
            Situations.Select(situation => situation.Problem).Distinct().ToDictionary(problem => problem, problem => problem.Under(hopLimit, designMargin));
        return Solve([.. Situations.Select(situation => situation with { Problem = changed[situation.Problem] })], Ways);
    }

    private RepeaterSolution Solve(ImmutableArray<Situation> situations, int ways) => RepeaterSolver.Solve(situations, ways, Costs, Limit);
}
