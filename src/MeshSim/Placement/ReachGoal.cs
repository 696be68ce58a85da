using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>Devices that must be reached over links of at least some margin, and what keeps a chosen set from that.</summary>
internal sealed class ReachGoal : IPlacementGoal
{
    private readonly CutFinder finder;
    private readonly int[] hops;
    private readonly NodeSet absent;
    private readonly UsefulOutlets useful;
    private readonly Survivals? survivals;
    private readonly StartHops start;

    /// <summary>Sets the goal.</summary>
    /// <param name="graph">The links that count.</param>
    /// <param name="demand">In which case; no outlet is lost in it.</param>
    /// <param name="survivals">The losses of outlets that these devices must survive too; null when none.</param>
    public ReachGoal(ReachGraph graph, Demand demand, Survivals? survivals = null)
    {
        Graph = graph;
        this.survivals = survivals;
        absent = demand.Absent;
        finder = new CutFinder(graph);
        hops = new int[graph.Problem.NodeCount];
        useful = new(graph, absent);
        start = new(graph, graph.NothingChosen().Without(absent));
        Devices = [.. HardestDevices.Of(graph, demand.Reached(graph, graph.NothingChosen(), isReached: false))];
    }

    /// <inheritdoc/>
    public ReachGraph Graph { get; }

    /// <summary>The nodes that are off.</summary>
    public NodeSet Absent => absent;

    /// <summary>The devices to reach, without those that are reached whenever another one is.</summary>
    public ImmutableArray<int> Devices { get; }

    /// <inheritdoc/>
    public bool LosesOutlets => false;

    /// <inheritdoc/>
    public bool IsMet(NodeSet passing)
    {
        Graph.CountHops(Graph.Problem.Coordinator, passing.Without(absent), hops);
        foreach (int device in Devices)
            if (hops[device] > Graph.Problem.HopLimit) return false;
        return true;
    }

    /// <inheritdoc/>
    public NodeSet StandInsFor(int outlet) => Graph.StandInsFor(Graph.Problem.NodeOf(outlet), absent);

    /// <summary>
    /// Cuts that a chosen set misses: for each device out of reach a series of cuts that share no outlet, once beginning beside
    /// the device and once beside the coordinator.
    /// </summary>
    public IEnumerable<Cut> CutsMissedBy(NodeSet chosen)
    {
        foreach (int device in Devices)
        {
            (int[] byDevice, int[] fromCoordinator) = useful.To(device);
            foreach (int[] cut in finder.Disjoint(device, chosen.Without(absent), fromCoordinator)) yield return Strengthened(cut, device);
            foreach (int[] cut in finder.Disjoint(device, chosen.Without(absent), byDevice)) yield return Strengthened(cut, device);
        }
    }

    /// <summary>
    /// Growing by the largest share first leaves a cut of small shares, and one whose shares sum to less than what it needs speaks
    /// against them.
    /// </summary>
    public IEnumerable<Cut> CutsMissedBy(double[] shares, int[] byShare)
    {
        double need = survivals is null ? 1 : Survivals.Need;
        foreach (int device in Devices)
        {
            int[] order = useful.InOrder(device, byShare);
            if (finder.Grow(device, start, order, shares, need) is { } cut) yield return Strengthened(cut, device);
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<int> OutletsThatMayHelp(NodeSet passing)
    {
        NodeSet present = passing.Without(absent);
        Graph.CountHops(Graph.Problem.Coordinator, present, hops);
        foreach (int device in Devices)
            if (hops[device] > Graph.Problem.HopLimit) return useful.ThatConnect(device, present, hops);
        return [];
    }

    private Cut Strengthened(int[] cut, int device) => survivals?.Strengthened(cut, device) ?? Cut.One(cut);
}
