using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>Why each chosen outlet is there: who could not do without it, and when.</summary>
internal sealed class RepeaterReasons
{
    private readonly RepeaterSurvey survey;
    private readonly CaseNames names;
    private readonly ImmutableArray<int> chosen;
    private readonly (Demand Demand, ReachGraph Graph)[] cases;

    /// <summary>Sets up.</summary>
    /// <param name="survey">The problem and who its nodes are.</param>
    /// <param name="names">What its cases are called.</param>
    /// <param name="solution">The answer to the problem.</param>
    /// <param name="ways">How many ways were asked for.</param>
    public RepeaterReasons(RepeaterSurvey survey, CaseNames names, RepeaterSolution solution, int ways)
    {
        this.survey = survey;
        this.names = names;
        chosen = solution.Outlets;
        GraphsByMargin graphs = new();
        cases = [.. Demand.Of(survey.Situations, ways).Where(Happens).Select(demand => (demand, graphs.Planned(demand)))];

        bool Happens(Demand demand) => demand.LostOutlet is not { } lost || chosen.Contains(lost - survey.Devices.Length);
    }

    /// <summary>One outlet of the answer, explained.</summary>
    public PlacedRepeater ForOutlet(int choice)
    {
        Reasons reasons = For(choice);
        return new()
        {
            Outlet = survey.Outlets[choice],
            Serves = reasons.Serves,
            ServesWhen = reasons.ServesWhen,
            UplinkMargin = reasons.Uplink.Margin,
            UplinkUncertainty = reasons.Uplink.Uncertainty,
            DownlinkMargin = reasons.Downlink.Margin,
            DownlinkUncertainty = reasons.Downlink.Uncertainty,
        };
    }

    /// <summary>One device of the answer that stays powered, explained.</summary>
    public KeptDevice ForKept(int choice)
    {
        Reasons reasons = For(choice);
        Device device = survey.Kept[choice - survey.Outlets.Length];
        return new(device.Id, device.SwitchedBy, reasons.ServesWhen, reasons.Uplink.Margin, reasons.Downlink.Margin);
    }

    private Reasons For(int outlet)
    {
        int node = survey.Problem.NodeOf(outlet);
        List<(Demand Demand, ReachGraph Graph, int[] Devices)> lost = [];
        HashSet<int> everyday = [];
        foreach ((Demand demand, ReachGraph graph) in cases)
        {
            if (demand.Absent.Contains(node)) continue;
            IEnumerable<int> without = demand.Reached(graph, graph.Chosen(chosen.Remove(outlet)), isReached: false);
            int[] devices = [.. demand.Reached(graph, graph.Chosen(chosen)).Intersect(without)];
            if (demand is { Situation: 0, Lost: null }) everyday.UnionWith(devices);
            else devices = [.. devices.Where(device => !everyday.Contains(device))];
            if (devices.Length > 0) lost.Add((demand, graph, devices));
        }

        (Demand first, ReachGraph links, int[] served) = lost[0];
        int upwards = Upwards(first, links, node), downwards = Downwards(first, node, served);
        return new(
            [.. everyday.Order().Select(device => survey.Devices[device].Id)],
            [
                .. lost.Where(entry => entry.Demand.Situation > 0 || entry.Demand.Lost is not null)
                    .Select(entry => new ServedCase(names.Of(entry.Demand.Situation, entry.Demand.Lost), Ids(entry.Devices))),
            ],
            LinkOf(first, node, upwards),
            LinkOf(first, node, downwards));
    }

    private ImmutableArray<DeviceId> Ids(int[] devices) => [.. devices.Select(device => survey.Devices[device].Id)];

    /// <summary>The node nearer to the coordinator to which its margin is greatest.</summary>
    private int Upwards(Demand demand, ReachGraph graph, int node)
    {
        NodeSet passing = graph.Chosen(chosen).Without(demand.Absent);
        int[] hops = demand.Hops(graph, passing);
        return Enumerable.Range(0, demand.Problem.NodeCount)
            .Where(other => passing.Contains(other) && hops[other] < hops[node])
            .MaxBy(other => demand.Problem.Margin(node, other).Value);
    }

    /// <summary>Of the nodes that it passes frames to, the one to which its margin is least.</summary>
    private int Downwards(Demand demand, int node, int[] devices)
    {
        WidestRoutes routes = new(demand.Problem, chosen, demand.Absent);
        return devices.Select(device => NextAfter(node, routes.RouteTo(device))).MinBy(next => demand.Problem.Margin(node, next).Value);
    }

    /// <summary>The node that follows a repeater on the way to a device that cannot do without it.</summary>
    private static int NextAfter(int node, IReadOnlyList<int> route)
    {
        for (int i = 0; i + 1 < route.Count; i++)
            if (route[i] == node) return route[i + 1];
        throw new InvalidOperationException("every route to a device that a repeater serves passes the repeater");
    }

    private PlannedLink LinkOf(Demand demand, int node, int other) => new(demand.Problem.Margin(node, other), survey.Uncertainty(node, other));

    private readonly record struct PlannedLink(Decibels Margin, MarginUncertainty Uncertainty);

    private readonly record struct Reasons(
        ImmutableArray<DeviceId> Serves, ImmutableArray<ServedCase> ServesWhen, PlannedLink Uplink, PlannedLink Downlink);
}
