using System.Collections.Immutable;
using MeshSim.Placement.Trees;
using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>
/// Solves the repeater problem: the fewest outlets that serve every device that can be served, in every case asked for; among those
/// the strongest weakest route, in whole steps of <see cref="MarginStep"/>, of the devices that need repeaters; among
/// those the outlets listed first (least sum of places in the list). The same problem always gets the same answer.
/// </summary>
public static class RepeaterSolver
{
    /// <summary>A difference in margin that is worth another outlet. Shadowing is several times as large.</summary>
    public static readonly Decibels MarginStep = new(1);

    /// <summary>Solves a problem: one way to each device, everything as it is.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="limit">The work to put into the proof; where it ends, the solution carries the bound reached.</param>
    public static RepeaterSolution Solve(RepeaterProblem problem, WorkLimit? limit = null)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return Solve([Situation.WithAllPower(problem)], ways: 1, limit);
    }

    /// <summary>Solves a problem of several situations, one thing happening at a time. Every outlet costs one.</summary>
    /// <param name="situations">One or more. The first is everyday; what must be reached in each is decided by who has power.</param>
    /// <param name="ways">2 when everyday the loss of any one router or repeater must be survived, else 1.</param>
    /// <param name="limit">The work to put into the proof; where it ends, the solution carries the bound reached.</param>
    /// <exception cref="ArgumentException">There is no situation, or two have other nodes.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of ways is neither 1 nor 2.</exception>
    public static RepeaterSolution Solve(ImmutableArray<Situation> situations, int ways, WorkLimit? limit = null)
    {
        Refuse(situations, ways);
        return Solve(situations, ways, [.. Enumerable.Repeat(1, situations[0].Problem.OutletCount)], limit);
    }

    /// <summary>Solves a problem of several situations in which outlets cost different amounts: the least costly choice.</summary>
    /// <param name="situations">One or more. The first is everyday; what must be reached in each is decided by who has power.</param>
    /// <param name="ways">2 when everyday the loss of any one router or repeater must be survived, else 1.</param>
    /// <param name="costs">Per outlet what choosing it costs, 0 or more; the sum must stay below two thousand million.</param>
    /// <param name="limit">The work to put into the proof; where it ends, the solution carries the bound reached.</param>
    /// <exception cref="ArgumentException">There is no situation, two have other nodes, or the costs do not fit.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of ways is neither 1 nor 2.</exception>
    public static RepeaterSolution Solve(ImmutableArray<Situation> situations, int ways, ImmutableArray<int> costs, WorkLimit? limit = null)
    {
        Refuse(situations, ways);
        if (costs.Length != situations[0].Problem.OutletCount || costs.Any(cost => cost < 0) || costs.Sum(cost => (long)cost) >= int.MaxValue)
            throw new ArgumentException("must be one per outlet and none below 0", nameof(costs));
        return Solve(new DemandSet(situations, ways), [.. costs], limit ?? new());
    }

    /// <summary>Solves what is asked of one network.</summary>
    /// <param name="demands">What is asked.</param>
    /// <param name="costs">Per outlet what choosing it costs.</param>
    /// <param name="limit">The work to put in.</param>
    /// <param name="knownBound">Nothing that does it costs less.</param>
    internal static RepeaterSolution Solve(DemandSet demands, int[] costs, WorkLimit limit, int knownBound = 0)
    {
        int unit = UnitOf(costs);
        RepeaterSolution solution = SolveWhole(demands, [.. costs.Select(cost => cost / unit)], limit, (knownBound + unit - 1) / unit);
        return solution with { Cost = solution.Cost * unit, LowerBound = solution.LowerBound * unit };
    }

    /// <summary>Bounds are rounded up to whole units, so the unit is made as large as it can be.</summary>
    private static int UnitOf(int[] costs) => Math.Max(1, costs.Aggregate(0, GreatestCommonDivisor));

    private static int GreatestCommonDivisor(int a, int b) => b == 0 ? a : GreatestCommonDivisor(b, a % b);

    private static RepeaterSolution SolveWhole(DemandSet demands, int[] costs, WorkLimit limit, int knownBound)
    {
        CutPool pool = new();
        IPlacementGoal[] goals = demands.Goals();
        SearchResult least = Search(goals, costs, null, null, pool, knownBound, limit);
        WorkDone work = least.Done;
        int[] outlets = least.Outlets ?? throw new InvalidOperationException("every outlet together does what can be done");
        if (outlets.Sum(outlet => costs[outlet]) > least.LowerBound) (outlets, least) = WithTrees(goals, costs, outlets, least.LowerBound, limit);
        int cost = outlets.Sum(outlet => costs[outlet]), cuts = pool.Cuts.Count;
        if (cost == least.LowerBound && outlets.Length > 0)
        {
            (outlets, WorkDone forTies) = PickAmongLeast(goals, new NeededRoutes(demands.Feasible, demands.Graphs), costs, outlets, pool, limit);
            work += forTies;
        }

        return new()
        {
            Outlets = [.. outlets],
            Unservable = demands.Unservable,
            Unmet = demands.Unmet,
            Cost = cost,
            LowerBound = least.LowerBound,
            Cuts = cuts,
            Work = work,
        };
    }

    /// <summary>
    /// What doing what can be done costs at least, by one relaxed master over the cuts that choosing nothing misses. The losses of routers do not count,
    /// so it is quick: for the many sites of a hub.
    /// </summary>
    /// <param name="demands">What is asked.</param>
    /// <param name="costs">Per outlet what choosing it costs.</param>
    /// <returns>The cost of the relaxed answer, and what it comes to in whole units.</returns>
    internal static (double Relaxed, int Cost) Bound(DemandSet demands, int[] costs)
    {
        CutPool pool = new();
        using HittingSetMaster master = new(costs, null, [.. costs.Select(_ => true)]);
        foreach (ReachGoal goal in demands.ReachGoals())
        {
            foreach (Cut cut in goal.CutsMissedBy(goal.Graph.NothingChosen()))
                if (pool.Add(cut)) master.Add(cut);
        }

        int unit = UnitOf(costs);
        double relaxed = pool.Cuts.Count == 0 ? 0 : master.Relax()?.Cost ?? 0;
        return (relaxed, unit * (int)Math.Ceiling((relaxed / unit) - CutSearch.SolverTolerance));
    }

    /// <summary>The least costly outlets that meet some goals, as far as the work goes.</summary>
    /// <param name="goals">The goals; every outlet together meets them.</param>
    /// <param name="costs">Per outlet what choosing it costs.</param>
    /// <param name="exactly">Other costs that must be kept to; null for none.</param>
    /// <param name="below">Only what costs less is of interest; null for no limit.</param>
    /// <param name="pool">Cuts that hold for these goals; those found are added.</param>
    /// <param name="knownBound">A lower bound known beforehand.</param>
    /// <param name="limit">The work to put in.</param>
    internal static SearchResult Search(
        IReadOnlyList<IPlacementGoal> goals, int[] costs, ExactCost? exactly, int? below, CutPool pool, int knownBound, WorkLimit limit)
    {
        if (goals.Count == 0) return new([], 0);
        using CutSearch search = new(goals, costs, exactly, below, pool);
        return search.Run(knownBound, limit);
    }

    /// <summary>
    /// What one way in each situation costs at least by trees of routes, where the cuts leave a gap: whatever else is asked costs no
    /// less. A tree may also be the better choice.
    /// </summary>
    private static (int[] Outlets, SearchResult Least) WithTrees(IPlacementGoal[] goals, int[] costs, int[] outlets, int bound, WorkLimit limit)
    {
        WorkLimit ofTrees = limit with { Relaxations = limit.TreeRelaxations, Rounds = 0 };
        foreach (ReachGoal goal in goals.OfType<ReachGoal>())
        {
            SearchResult tree = TreeBound.Of(goal, costs, ofTrees);
            bound = Math.Max(bound, tree.LowerBound);
            if (tree.Outlets is { } other && Cost(other) < Cost(outlets) && ChosenSets.AreMet(goals, goal.Graph.Chosen(other))) outlets = other;
        }

        return (outlets, new(outlets, bound));

        int Cost(int[] chosen) => chosen.Sum(outlet => costs[outlet]);
    }

    private static (int[] Outlets, WorkDone Work) PickAmongLeast(IPlacementGoal[] all, NeededRoutes needed, int[] costs, int[] outlets, CutPool pool, WorkLimit limit)
    {
        int cost = outlets.Sum(outlet => costs[outlet]);
        int steps = needed.StepsReached(outlets);
        WorkLimit left = limit.ForTies();
        WorkDone work = default;
        while (needed.Stronger(steps + 1) is { } stronger)
        {
            // Fewer links cut off no less, so the cuts found so far hold for stronger links too; not the other way round. Half of what is left each, so
            // that there is some for the last question.
            CutPool strongerPool = pool.Copy();
            SearchResult found = Search([.. all, .. stronger], costs, null, cost + 1, strongerPool, cost, left.SharedBy(2));
            left = left.Less(found.Done);
            work += found.Done;
            if (found.Outlets is not { } better) break;
            (outlets, pool, steps) = (better, strongerPool, needed.StepsReached(better));
        }

        int[] places = [.. Enumerable.Range(0, costs.Length)];
        SearchResult first = Search([.. all, .. needed.Stronger(steps)!], places, new(costs, cost), outlets.Sum(), pool, 0, left);
        return (first.Outlets ?? outlets, work + first.Done);
    }

    private static void Refuse(ImmutableArray<Situation> situations, int ways)
    {
        if (situations.IsDefaultOrEmpty) throw new ArgumentException("there must be one", nameof(situations));
        if (!PlacementGoals.WaysRange.Contains(ways)) throw new ArgumentOutOfRangeException(nameof(ways), ways, "must be 1 or 2");
        RepeaterProblem first = situations[0].Problem;
        foreach ((RepeaterProblem problem, ImmutableArray<int> off) in situations)
        {
            if (!problem.Relays.SequenceEqual(first.Relays) || problem.OutletCount != first.OutletCount)
                throw new ArgumentException("all must have the same nodes", nameof(situations));
            if (problem.Coordinator != first.Coordinator || problem.HopLimit != first.HopLimit || problem.DesignMargin != first.DesignMargin)
                throw new ArgumentException("all must have the same coordinator, hop limit and design margin", nameof(situations));
            if (off.Contains(problem.Coordinator)) throw new ArgumentException("the coordinator must have power", nameof(situations));
        }
    }
}
