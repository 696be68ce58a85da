using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>Puts the answer to a repeater problem in terms of the home.</summary>
public static class RepeaterAdvice
{
    /// <summary>What to plug in where, what each repeater is for, and what the devices out of reach lack.</summary>
    /// <param name="network">The network surveyed.</param>
    /// <param name="survey">The problem and who its nodes are.</param>
    /// <param name="solution">The answer to the problem.</param>
    public static RepeaterPlacement From(Network network, RepeaterSurvey survey, RepeaterSolution solution)
    {
        RepeaterProblem problem = survey.Problem;
        ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin);
        WidestRoutes routes = new(problem, solution.Outlets);
        return new()
        {
            Network = network.Name,
            Repeaters = [.. solution.Outlets.Select(outlet => Explain(survey, graph, routes, solution.Outlets, outlet))],
            Unserved = [.. solution.Unservable.Select(device => Lack(survey, graph, device))],
            LowerBound = solution.LowerBound,
            OutletsConsidered = survey.Outlets.Length,
        };
    }

    /// <summary>The answer when the coordinator itself has no power: no outlet helps, and no level is what is missing.</summary>
    /// <param name="network">The network.</param>
    /// <param name="devices">Its devices that have power.</param>
    public static RepeaterPlacement WithoutCoordinator(Network network, IEnumerable<DeviceId> devices) => new()
    {
        Network = network.Name,
        Repeaters = [],
        Unserved = [.. devices.Select(device => new UnservedDevice(device, null, $"none: coordinator {network.Coordinator} has no power"))],
        LowerBound = 0,
        OutletsConsidered = 0,
    };

    private static PlacedRepeater Explain(
        RepeaterSurvey survey, ReachGraph graph, WidestRoutes routes, ImmutableArray<int> chosen, int outlet)
    {
        RepeaterProblem problem = survey.Problem;
        int node = problem.NodeOf(outlet);
        int[] with = HopsFromCoordinator(graph, graph.Chosen(chosen));
        int[] without = HopsFromCoordinator(graph, graph.Chosen(chosen.Remove(outlet)));
        int[] serves =
        [
            .. Enumerable.Range(0, problem.DeviceCount)
                .Where(device => with[device] <= problem.HopLimit && without[device] > problem.HopLimit),
        ];
        NodeSet passing = graph.Chosen(chosen);
        return new()
        {
            Outlet = survey.Outlets[outlet],
            Serves = [.. serves.Select(device => survey.Devices[device].Id)],
            UplinkMargin = new(Enumerable.Range(0, problem.NodeCount)
                .Where(other => passing.Contains(other) && with[other] < with[node])
                .Max(other => problem.Margin(node, other).Value)),
            DownlinkMargin = new(serves.Min(device => problem.Margin(node, NextAfter(node, routes.RouteTo(device))).Value)),
        };
    }

    /// <summary>The node that follows a repeater on the way to a device that cannot do without it.</summary>
    private static int NextAfter(int node, IReadOnlyList<int> route)
    {
        for (int i = 0; i + 1 < route.Count; i++)
            if (route[i] == node) return route[i + 1];
        throw new InvalidOperationException("every route to a device that a repeater serves passes the repeater");
    }

    private static UnservedDevice Lack(RepeaterSurvey survey, ReachGraph graph, int device)
    {
        RepeaterProblem problem = survey.Problem;
        int[] hops = HopsFromCoordinator(graph, graph.EverythingChosen());
        bool isTooFar = hops[device] < ReachGraph.Unreached;
        int relay = Enumerable.Range(0, problem.NodeCount)
            .Where(node => node != device && problem.CanRelay(node))
            .Where(node => isTooFar ? hops[node] == hops[device] - 1 : hops[node] < problem.HopLimit)
            .MaxBy(node => problem.Margin(device, node).Value);
        Decibels? shortfall = isTooFar ? null : problem.DesignMargin - problem.Margin(device, relay);
        return new(survey.Devices[device].Id, shortfall, survey.Describe(relay));
    }

    private static int[] HopsFromCoordinator(ReachGraph graph, NodeSet passing)
    {
        int[] hops = new int[graph.Problem.NodeCount];
        graph.CountHops(graph.Problem.Coordinator, passing, hops);
        return hops;
    }
}
