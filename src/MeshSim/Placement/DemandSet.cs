using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>All that is asked of one network, and what of it every outlet together can do.</summary>
internal sealed class DemandSet
{
    /// <summary>Finds out what can be had.</summary>
    /// <param name="situations">Everyday first.</param>
    /// <param name="ways">2 when everyday any single loss must be survived.</param>
    public DemandSet(ImmutableArray<Situation> situations, int ways)
    {
        ImmutableArray<Demand> all = [.. Demand.Of(situations, ways)];
        Graphs = new();
        Feasible = FeasibleOf(all);
        Unservable = [.. all[0].Devices.Except(Feasible[0].Devices)];
        Unmet = [.. all.Zip(Feasible).Skip(1).SelectMany(pair => UnmetOf(pair.First, pair.Second))];
    }

    /// <summary>The links of each demand by margin.</summary>
    public GraphsByMargin Graphs { get; }

    /// <summary>The demands with the devices that can be served.</summary>
    public ImmutableArray<Demand> Feasible { get; }

    /// <summary>The devices out of reach everyday whatever is chosen.</summary>
    public ImmutableArray<int> Unservable { get; }

    /// <summary>What else cannot be had.</summary>
    public ImmutableArray<UnmetDemand> Unmet { get; }

    /// <summary>All that cannot be had, everyday first.</summary>
    public IEnumerable<UnmetDemand> Undone => UnmetDemand.All(Unservable, Unmet);

    /// <summary>The goals of what can be had.</summary>
    public IPlacementGoal[] Goals() => GoalsOf(Feasible, Graphs.Planned);

    /// <summary>The goals of what can be had but for losses, of which only those of chosen outlets count.</summary>
    public ReachGoal[] ReachGoals() => ReachGoalsOf(Feasible, Graphs.Planned, SurvivalsOf(Feasible));

    /// <summary>The goals of demands, those left out that are met anyway.</summary>
    /// <param name="demands">Demands that every outlet together meets. Everyday's is among them where one of its losses is.</param>
    /// <param name="graphOf">The links that count in each.</param>
    public static IPlacementGoal[] GoalsOf(IReadOnlyCollection<Demand> demands, Func<Demand, ReachGraph> graphOf)
    {
        Survivals? survivals = SurvivalsOf(demands);
        ReachGoal[] goals = ReachGoalsOf(demands, graphOf, survivals);
        if (survivals is null) return goals;
        Demand loss = survivals.Losses[0];
        NodeSet absent = loss.Absent.Copy();
        absent.Remove(loss.Lost!.Value);
        SurvivalGoal survival = new(graphOf(loss), survivals, absent);
        return survival.IsEmpty ? goals : [.. goals, survival];
    }

    private static Survivals? SurvivalsOf(IReadOnlyCollection<Demand> demands)
    {
        ImmutableArray<Demand> losses = [.. demands.Where(demand => demand.Lost is not null)];
        return losses.IsEmpty ? null : new(losses);
    }

    private static ReachGoal[] ReachGoalsOf(IReadOnlyCollection<Demand> demands, Func<Demand, ReachGraph> graphOf, Survivals? survivals) =>
    [
        .. demands.Where(demand => demand.Lost is null)
            .Select(demand => new ReachGoal(graphOf(demand), demand, demand.Situation == 0 ? survivals : null))
            .Where(goal => !goal.Devices.IsEmpty),
    ];

    /// <summary>What every outlet together does of each demand.</summary>
    private ImmutableArray<Demand> FeasibleOf(ImmutableArray<Demand> all)
    {
        ReachGraph planned = Graphs.Planned(all[0]);
        CriticalRelays critical = new(planned);
        critical.Find(planned.EverythingChosen().Without(all[0].Absent));
        ImmutableArray<int> reached = [.. all[0].Devices.Where(device => critical.Hops[device] <= planned.Problem.HopLimit)];
        NodeSet matters = critical.OnAny(reached);
        return [.. all.Select(demand => demand with { Devices = ReachedIn(demand) })];

        // A relay that not all shortest ways to some device pass is lost without anybody being further away; a search for each would find nothing else.
        ImmutableArray<int> ReachedIn(Demand demand) =>
            demand.Lost is { } lost && !matters.Contains(lost) ? reached.Remove(lost)
            : demand.Reached(Graphs.Planned(demand), Graphs.Planned(demand).EverythingChosen());
    }

    private IEnumerable<UnmetDemand> UnmetOf(Demand wanted, Demand feasible) =>
        wanted.Devices.Length == feasible.Devices.Length ? [] : wanted.Devices.Except(feasible.Devices)
            .Where(device => wanted.Lost is null || !Unservable.Contains(device))
            .Select(device => new UnmetDemand(device, wanted.Situation, wanted.Lost));
}
