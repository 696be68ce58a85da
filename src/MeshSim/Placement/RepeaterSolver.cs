using System.Collections.Immutable;
using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>
/// Solves the repeater problem: the fewest outlets that serve every device that can be served; among those the strongest weakest
/// route, in whole steps of <see cref="MarginStep"/>, of the devices that need repeaters; among those the outlets listed first
/// (least sum of places in the list). The same problem always gets the same answer.
/// </summary>
public static class RepeaterSolver
{
    /// <summary>A difference in margin that is worth another outlet. Shadowing is several times as large.</summary>
    public static readonly Decibels MarginStep = new(1);

    /// <summary>Solves a problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="limit">The work to put into the proof; where it ends, the solution carries the bound reached.</param>
    public static RepeaterSolution Solve(RepeaterProblem problem, WorkLimit? limit = null)
    {
        ArgumentNullException.ThrowIfNull(problem);
        limit ??= new();
        ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin);
        ILookup<bool, int> devices = Devices(problem).ToLookup(ReachedBy(graph, graph.EverythingChosen()));
        ReachGoal all = new(graph, devices[true]);

        CutPool pool = new();
        int[] equal = [.. Enumerable.Repeat(1, problem.OutletCount)];
        SearchResult fewest = Search([all], equal, null, null, pool, 0, limit);
        int[] outlets = fewest.Outlets ?? throw new InvalidOperationException("every outlet together serves what can be served");
        if (outlets.Length == fewest.LowerBound && outlets.Length > 0)
        {
            Func<int, bool> isReached = ReachedBy(graph, graph.NothingChosen());
            outlets = PickAmongFewest(all, [.. devices[true].Where(device => !isReached(device))], outlets, pool, limit);
        }

        return new()
        {
            Outlets = [.. outlets],
            Unservable = [.. devices[false]],
            LowerBound = fewest.LowerBound,
        };
    }

    /// <summary>The devices that must be reached: all but the coordinator.</summary>
    private static IEnumerable<int> Devices(RepeaterProblem problem) =>
        Enumerable.Range(0, problem.DeviceCount).Where(device => device != problem.Coordinator);

    private static Func<int, bool> ReachedBy(ReachGraph graph, NodeSet passing)
    {
        int[] hops = new int[graph.Problem.NodeCount];
        graph.CountHops(graph.Problem.Coordinator, passing, hops);
        return device => hops[device] <= graph.Problem.HopLimit;
    }

    private static int[] PickAmongFewest(ReachGoal all, ImmutableArray<int> needy, int[] outlets, CutPool pool, WorkLimit limit)
    {
        RepeaterProblem problem = all.Graph.Problem;
        int[] equal = [.. Enumerable.Repeat(1, problem.OutletCount)];
        int steps = StepsReached(problem, needy, outlets);
        while (Stronger(steps + 1) is { } stronger)
        {
            // Fewer links cut off no less, so the cuts found so far hold for stronger links too; not the other way round.
            CutPool strongerPool = pool.Copy();
            SearchResult found = Search([all, stronger], equal, null, outlets.Length + 1, strongerPool, outlets.Length, limit);
            if (found.Outlets is not { } better) break;
            (outlets, pool, steps) = (better, strongerPool, StepsReached(problem, needy, better));
        }

        int[] places = [.. Enumerable.Range(0, problem.OutletCount)];
        return Search([all, Stronger(steps)!], places, outlets.Length, outlets.Sum(), pool, 0, limit).Outlets ?? outlets;

        ReachGoal? Stronger(int count)
        {
            ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin + (count * MarginStep));
            return needy.All(ReachedBy(graph, graph.EverythingChosen())) ? new(graph, needy) : null;
        }
    }

    /// <summary>How many whole steps above the design margin the weakest route of the needy devices lies.</summary>
    private static int StepsReached(RepeaterProblem problem, ImmutableArray<int> needy, int[] outlets)
    {
        WidestRoutes routes = new(problem, outlets);
        Decibels worst = new(needy.Min(device => routes.MarginOf(device).Value));
        int steps = (int)Math.Floor((worst - problem.DesignMargin).Value / MarginStep.Value);

        // The links are compared with this sum, so it decides, not the rounded quotient.
        while (problem.DesignMargin + ((steps + 1) * MarginStep) <= worst) steps++;
        return steps;
    }

    private static SearchResult Search(
        IReadOnlyList<ReachGoal> goals, int[] costs, int? size, int? below, CutPool pool, int knownBound, WorkLimit limit)
    {
        if (goals.All(goal => goal.Devices.IsEmpty)) return new([], 0);
        using CutSearch search = new(goals, costs, size, below, pool);
        return search.Run(knownBound, limit);
    }
}
