using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>Devices that must be reached in one situation, with one router lost or none.</summary>
/// <param name="Problem">Nodes and margins of the situation.</param>
/// <param name="Situation">The place of the situation among all.</param>
/// <param name="Lost">The router or outlet that fails; null when none does.</param>
/// <param name="Absent">The nodes that are off, the lost one among them.</param>
/// <param name="Devices">The devices that must be reached.</param>
internal sealed record Demand(RepeaterProblem Problem, int Situation, int? Lost, NodeSet Absent, ImmutableArray<int> Devices)
{
    /// <summary>The lost node when it is an outlet: its loss hurts nobody unless it was chosen.</summary>
    public int? LostOutlet => Lost >= Problem.DeviceCount ? Lost : null;

    /// <summary>
    /// All demands: each situation as it is, the first one first; then, when two ways are wanted, the first situation without each of
    /// its routers and outlets in turn.
    /// </summary>
    public static IEnumerable<Demand> Of(ImmutableArray<Situation> situations, int ways)
    {
        for (int index = 0; index < situations.Length; index++) yield return Of(situations[index], index, null);
        if (ways < PlacementGoals.WaysRange.Max) yield break;
        foreach (int router in situations[0].Routers) yield return Of(situations[0], 0, router);
    }

    /// <summary>The fewest links from the coordinator to each node.</summary>
    /// <param name="graph">The links that count, of the demand's problem.</param>
    /// <param name="passing">The nodes that would pass frames on if they had power.</param>
    public int[] Hops(ReachGraph graph, NodeSet passing)
    {
        int[] hops = new int[Problem.NodeCount];
        graph.CountHops(Problem.Coordinator, passing.Without(Absent), hops);
        return hops;
    }

    /// <summary>The devices that are reached, or those that are not.</summary>
    public ImmutableArray<int> Reached(ReachGraph graph, NodeSet passing, bool isReached = true)
    {
        int[] hops = Hops(graph, passing);
        return [.. Devices.Where(device => hops[device] <= Problem.HopLimit == isReached)];
    }

    /// <summary>One situation, with one of its routers or outlets lost or none.</summary>
    public static Demand Of(Situation situation, int index, int? lost)
    {
        NodeSet absent = new(situation.Problem.NodeCount);
        foreach (int node in situation.WithoutPower) absent.Add(node);
        if (lost is { } gone) absent.Add(gone);
        return new(situation.Problem, index, lost, absent, [.. situation.Devices.Where(device => device != lost)]);
    }
}
