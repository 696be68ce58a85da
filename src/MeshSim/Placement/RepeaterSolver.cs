using System.Collections.Immutable;
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

    /// <summary>Solves a problem of several situations, one thing happening at a time.</summary>
    /// <param name="situations">One or more. The first is everyday; what must be reached in each is decided by who has power.</param>
    /// <param name="ways">2 when everyday the loss of any one router or repeater must be survived, else 1.</param>
    /// <param name="limit">The work to put into the proof; where it ends, the solution carries the bound reached.</param>
    /// <exception cref="ArgumentException">There is no situation, or two have other nodes.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of ways is neither 1 nor 2.</exception>
    public static RepeaterSolution Solve(ImmutableArray<Situation> situations, int ways, WorkLimit? limit = null)
    {
        Refuse(situations, ways);
        limit ??= new();
        GraphsByMargin graphs = new();
        Demand[] demands = [.. Demand.Of(situations, ways)];
        Demand[] feasible = [.. demands.Select(demand => demand with { Devices = demand.Reached(graphs.Planned(demand), All(demand)) })];
        ReachGoal[] goals = GoalsOf(feasible, graphs.Planned);

        CutPool pool = new();
        int[] equal = [.. Enumerable.Repeat(1, situations[0].Problem.OutletCount)];
        SearchResult fewest = Search(goals, equal, null, null, pool, 0, limit);
        int[] outlets = fewest.Outlets ?? throw new InvalidOperationException("every outlet together does what can be done");
        if (outlets.Length == fewest.LowerBound && outlets.Length > 0)
            outlets = PickAmongFewest(goals, new NeededRoutes(feasible, graphs), outlets, pool, limit);

        ImmutableArray<int> unservable = [.. demands[0].Devices.Except(feasible[0].Devices)];
        return new()
        {
            Outlets = [.. outlets],
            Unservable = unservable,
            Unmet = [.. demands.Zip(feasible).Skip(1).SelectMany(pair => Unmet(pair.First, pair.Second, unservable))],
            LowerBound = fewest.LowerBound,
        };

        NodeSet All(Demand demand) => graphs.Planned(demand).EverythingChosen();
    }

    /// <summary>The goals of demands, those left out that are met anyway.</summary>
    internal static ReachGoal[] GoalsOf(IEnumerable<Demand> demands, Func<Demand, ReachGraph> graphOf) =>
        [.. demands.Select(demand => new ReachGoal(graphOf(demand), demand, demand.Devices)).Where(goal => !goal.Devices.IsEmpty)];

    private static IEnumerable<UnmetDemand> Unmet(Demand all, Demand feasible, ImmutableArray<int> unservable) =>
        all.Devices.Except(feasible.Devices)
            .Where(device => all.Lost is null || !unservable.Contains(device))
            .Select(device => new UnmetDemand(device, all.Situation, all.Lost));

    private static int[] PickAmongFewest(ReachGoal[] all, NeededRoutes needed, int[] outlets, CutPool pool, WorkLimit limit)
    {
        int outletCount = all[0].Graph.Problem.OutletCount;
        int[] equal = [.. Enumerable.Repeat(1, outletCount)];
        int steps = needed.StepsReached(outlets);
        while (needed.Stronger(steps + 1) is { } stronger)
        {
            // Fewer links cut off no less, so the cuts found so far hold for stronger links too; not the other way round.
            CutPool strongerPool = pool.Copy();
            SearchResult found = Search([.. all, .. stronger], equal, null, outlets.Length + 1, strongerPool, outlets.Length, limit);
            if (found.Outlets is not { } better) break;
            (outlets, pool, steps) = (better, strongerPool, needed.StepsReached(better));
        }

        int[] places = [.. Enumerable.Range(0, outletCount)];
        return Search([.. all, .. needed.Stronger(steps)!], places, outlets.Length, outlets.Sum(), pool, 0, limit).Outlets ?? outlets;
    }

    private static SearchResult Search(
        ReachGoal[] goals, int[] costs, int? size, int? below, CutPool pool, int knownBound, WorkLimit limit)
    {
        if (goals.Length == 0) return new([], 0);
        using CutSearch search = new(goals, costs, size, below, pool);
        return search.Run(knownBound, limit);
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
