using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>How strong the routes are of the devices that need a repeater, each in the case in which it needs one.</summary>
internal sealed class NeededRoutes
{
    private readonly Demand[] needy;
    private readonly GraphsByMargin graphs;

    /// <summary>Picks who needs a repeater.</summary>
    /// <param name="feasible">Demands that every outlet together meets.</param>
    /// <param name="graphs">Their links.</param>
    public NeededRoutes(IEnumerable<Demand> feasible, GraphsByMargin graphs)
    {
        this.graphs = graphs;
        needy =
        [
            .. feasible.Select(demand => demand with { Devices = demand.Reached(graphs.Planned(demand), graphs.Planned(demand).NothingChosen(), isReached: false) })
                .Where(demand => !demand.Devices.IsEmpty),
        ];
    }

    /// <summary>The goals of routes that many steps above the design margin; null when not even all outlets together have them.</summary>
    public IPlacementGoal[]? Stronger(int steps)
    {
        foreach (Demand demand in needy)
            if (demand.Reached(GraphOf(demand), GraphOf(demand).EverythingChosen()).Length < demand.Devices.Length) return null;
        return DemandSet.GoalsOf(needy, GraphOf);

        ReachGraph GraphOf(Demand demand) => graphs.AtLeast(demand.Problem, demand.Problem.DesignMargin + (steps * RepeaterSolver.MarginStep));
    }

    /// <summary>How many whole steps above the design margin the weakest of these routes lies.</summary>
    public int StepsReached(int[] outlets)
    {
        Decibels worst = new(needy.Where(Happens).Min(demand => Weakest(demand)));
        Decibels designMargin = needy[0].Problem.DesignMargin;
        int steps = (int)Math.Floor((worst - designMargin).Value / RepeaterSolver.MarginStep.Value);

        // The links are compared with this sum, so it decides, not the rounded quotient.
        while (designMargin + ((steps + 1) * RepeaterSolver.MarginStep) <= worst) steps++;
        return steps;

        bool Happens(Demand demand) => demand.LostOutlet is not { } lost || outlets.Contains(lost - demand.Problem.DeviceCount);

        double Weakest(Demand demand)
        {
            WidestRoutes routes = new(demand.Problem, outlets, demand.Absent);
            return demand.Devices.Min(device => routes.MarginOf(device).Value);
        }
    }
}
