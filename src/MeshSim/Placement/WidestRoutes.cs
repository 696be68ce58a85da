using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>
/// The routes from the coordinator whose weakest link is strongest, within the hop limit, with some outlets chosen. Among equally
/// strong ones the route of fewest links counts, among these the one over the lower node.
/// </summary>
internal sealed class WidestRoutes
{
    private readonly RepeaterProblem problem;
    private readonly List<double[]> marginsByHopsDb = [];
    private readonly List<int[]> previousByHops = [];

    /// <summary>Finds the routes.</summary>
    /// <param name="problem">Nodes and margins.</param>
    /// <param name="outlets">The chosen outlets.</param>
    /// <param name="absent">Nodes that are off: no route leads to them or over them.</param>
    public WidestRoutes(RepeaterProblem problem, IEnumerable<int> outlets, NodeSet absent)
    {
        this.problem = problem;
        int[] nodes = [.. Enumerable.Range(0, problem.DeviceCount).Concat(outlets.Select(problem.NodeOf)).Where(node => !absent.Contains(node))];
        double[] start = new double[problem.NodeCount];
        Array.Fill(start, double.NegativeInfinity);
        start[problem.Coordinator] = double.PositiveInfinity;
        marginsByHopsDb.Add(start);
        previousByHops.Add(Enumerable.Repeat(problem.Coordinator, problem.NodeCount).ToArray());
        while (marginsByHopsDb.Count <= problem.HopLimit && Widen(nodes))
        {
        }
    }

    /// <summary>The margin of the weakest link on the route to a device; minus infinity when there is none.</summary>
    public Decibels MarginOf(int node) => new(marginsByHopsDb[^1][node]);

    /// <summary>
    /// The route to a node, the coordinator first. It may use links below the design margin when nothing stronger leads there.
    /// </summary>
    public IReadOnlyList<int> RouteTo(int node)
    {
        List<int> route = [];
        for (int hops = FewestHops(node, marginsByHopsDb.Count - 1); hops > 0; hops = FewestHops(node, hops - 1))
        {
            route.Add(node);
            node = previousByHops[hops][node];
        }

        route.Add(problem.Coordinator);
        route.Reverse();
        return route;
    }

    /// <summary>The fewest hops, up to some, with which the route to a node is as strong as with those.</summary>
    private int FewestHops(int node, int hops)
    {
        while (hops > 0 && marginsByHopsDb[hops - 1][node] >= marginsByHopsDb[hops][node]) hops--;
        return hops;
    }

    /// <summary>Allows one more link. False when no route became stronger.</summary>
    private bool Widen(int[] nodes)
    {
        double[] before = marginsByHopsDb[^1], after = [.. before];
        int[] previous = [.. previousByHops[^1]];
        bool any = false;
        foreach (int relay in nodes)
        {
            if (!problem.CanRelay(relay) || double.IsNegativeInfinity(before[relay])) continue;
            foreach (int node in nodes)
            {
                double marginDb = Math.Min(before[relay], problem.Margin(relay, node).Value);
                if (marginDb <= after[node]) continue;
                (after[node], previous[node], any) = (marginDb, relay, true);
            }
        }

        if (!any) return false;
        marginsByHopsDb.Add(after);
        previousByHops.Add(previous);
        return true;
    }
}
