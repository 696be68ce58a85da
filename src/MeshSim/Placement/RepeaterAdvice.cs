using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>Asks where repeaters should go, and puts the answer in terms of the home.</summary>
public static class RepeaterAdvice
{
    /// <summary>What to plug in where, what each repeater is for, and what the devices out of reach lack.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="graphs">Its links in any state.</param>
    /// <param name="everyday">The state planned for, with power at the coordinator; null when everything is on and every door closed.</param>
    /// <param name="held">Other states in which every device that has power must be reached.</param>
    /// <param name="goals">What else repeaters are to achieve.</param>
    public static RepeaterPlacement For(
        Home home, Network network, StateGraphs graphs, State? everyday, ImmutableArray<State> held, PlacementGoals goals)
    {
        ILookup<bool, State> withCoordinator = held.ToLookup(state => graphs.In(state).Coordinator >= 0);
        ImmutableArray<State> possible = [.. withCoordinator[true]];
        RepeaterSurvey survey = RepeaterSurvey.Of(home, network, graphs, everyday, possible);
        RepeaterSolution solution = RepeaterSolver.Solve(survey.Situations, goals.Ways, survey.CostsOf(home.Costs));
        int repeaters = survey.OutletsOf(solution.Outlets).Length;
        CaseNames names = new(survey, [null, .. possible.Select(state => state.Name)]);
        RepeaterReasons reasons = new(survey, names, solution, goals.Ways);
        return new()
        {
            Network = network.Name,
            Goals = goals,
            StatesHeld = [.. held.Select(state => state.Name)],
            Repeaters = [.. solution.Outlets.Where(choice => choice < survey.Outlets.Length).Select(reasons.ForOutlet)],
            CoordinatorOff = CoordinatorOutage.Among(home, network, withCoordinator[false]),
            KeptOn = [.. solution.Outlets.Where(choice => choice >= survey.Outlets.Length).Select(reasons.ForKept)],
            Unserved =
            [
                .. solution.Undone.Select(unmet => Lack(survey, names, unmet)),
                .. withCoordinator[false].SelectMany(state => DarkIn(network, graphs, state)),
            ],
            LowerBound = solution.IsProven ? repeaters : LeastRepeaters(solution.LowerBound - (survey.Kept.Length * home.Costs.SwitchGivenUp), home.Costs),
            Cost = solution.Cost,
            CostBound = solution.LowerBound,
            OutletsConsidered = survey.Outlets.Length,
        };
    }

    /// <summary>The answer when the coordinator itself has no power: no outlet helps, and no level is what is missing.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">The network.</param>
    /// <param name="devices">Its devices that have power.</param>
    /// <param name="state">The state planned for; null when everything is on, and the coordinator is missing.</param>
    public static RepeaterPlacement WithoutCoordinator(Home home, Network network, IEnumerable<DeviceId> devices, State? state) => new()
    {
        Network = network.Name,
        Repeaters = [],
        Unserved = [.. devices.Select(device => Dark(network, device, default))],
        CoordinatorOff = state is null ? [] : CoordinatorOutage.Among(home, network, [state]),
        LowerBound = 0,
        OutletsConsidered = 0,
    };

    /// <summary>How many repeaters a cost stands for at least.</summary>
    private static int LeastRepeaters(int cost, PlacementCosts costs) => Math.Max(0, (cost + costs.Repeater - 1) / costs.Repeater);

    private static IEnumerable<UnservedDevice> DarkIn(Network network, StateGraphs graphs, State state) =>
        graphs.In(state).Devices.Select(device => Dark(network, device, new(state.Name, null)));

    private static UnservedDevice Dark(Network network, DeviceId device, PlacementCase when) =>
        new(device, null, $"none: coordinator {network.Coordinator} has no power", when) { IsCoordinatorOff = true };

    /// <summary>What a device lacks that cannot be had.</summary>
    internal static UnservedDevice Lack(RepeaterSurvey survey, CaseNames names, UnmetDemand unmet)
    {
        int device = unmet.Device;
        Demand demand = Demand.Of(survey.Situations[unmet.Situation], unmet.Situation, unmet.Lost);
        RepeaterProblem problem = demand.Problem;
        ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin);
        int[] hops = demand.Hops(graph, graph.EverythingChosen());
        bool isTooFar = hops[device] < ReachGraph.Unreached;
        int relay = Enumerable.Range(0, problem.NodeCount)
            .Where(node => node != device && problem.CanRelay(node) && !demand.Absent.Contains(node))
            .Where(node => isTooFar ? hops[node] == hops[device] - 1 : hops[node] < problem.HopLimit)
            .MaxBy(node => problem.Margin(device, node).Value);
        Decibels? shortfall = isTooFar ? null : problem.DesignMargin - problem.Margin(device, relay);
        return new(survey.Devices[device].Id, shortfall, survey.Describe(relay), names.Of(unmet.Situation, unmet.Lost));
    }
}
