using System.Collections.Immutable;
using MeshSim.Quantities;

namespace MeshSim.Placement.Concessions;

/// <summary>
/// A repeater problem in which some outlets take a second repeater: a further choice after all others that hears what the first hears, is
/// heard by it, and has power when it has. Only the loss of one alone parts them.
/// </summary>
internal sealed class TwinOutlets
{
    private readonly ImmutableArray<Situation> situations;
    private readonly ImmutableArray<int> costs;
    private readonly ImmutableArray<int> doubled;

    /// <summary>Adds the twins.</summary>
    /// <param name="situations">Everyday first.</param>
    /// <param name="costs">Per choice what it costs.</param>
    /// <param name="doubled">The outlets that take two, in order.</param>
    public TwinOutlets(ImmutableArray<Situation> situations, ImmutableArray<int> costs, ImmutableArray<int> doubled)
    {
        this.doubled = doubled;

        // Situations with the same doors share their problem, and must go on sharing it.
        Dictionary<RepeaterProblem, RepeaterProblem> problems =
            situations.Select(situation => situation.Problem).Distinct().ToDictionary(problem => problem, WithTwins);
        this.situations = [.. situations.Select(situation => new Situation(problems[situation.Problem], OffIn(situation)))];
        this.costs = [.. costs, .. doubled.Select(outlet => costs[outlet])];
    }

    /// <summary>The least costly choice; an outlet that takes two is in it twice.</summary>
    /// <param name="ways">How many ways are asked for.</param>
    /// <param name="limit">The work to put into the proof.</param>
    public RepeaterSolution Solve(int ways, WorkLimit limit)
    {
        RepeaterSolution solution = RepeaterSolver.Solve(situations, ways, costs, limit);
        int choices = costs.Length - doubled.Length;
        return solution with { Outlets = [.. solution.Outlets.Select(choice => choice < choices ? choice : doubled[choice - choices]).Order()] };
    }

    private RepeaterProblem WithTwins(RepeaterProblem problem)
    {
        return new(problem.Relays, problem.Coordinator, problem.OutletCount + doubled.Length, problem.HopLimit, problem.DesignMargin, Margin);

        // Two at one place hear each other whatever the margin; no way needs both.
        Decibels Margin(int a, int b) => First(a) == First(b) ? new(double.PositiveInfinity) : problem.Margin(First(a), First(b));

        int First(int node) => node < problem.NodeCount ? node : problem.NodeOf(doubled[node - problem.NodeCount]);
    }

    private ImmutableArray<int> OffIn(Situation situation) =>
    [
        .. situation.WithoutPower,
        .. Enumerable.Range(0, doubled.Length)
            .Where(twin => situation.WithoutPower.Contains(situation.Problem.NodeOf(doubled[twin])))
            .Select(twin => situation.Problem.NodeCount + twin),
    ];
}
