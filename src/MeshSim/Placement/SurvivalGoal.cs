using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>
/// The loss of any one router or chosen outlet must be survived, whichever it is. That the devices are reached with nothing lost
/// is another goal.
/// </summary>
internal sealed class SurvivalGoal : IPlacementGoal
{
    private readonly Survivals survivals;
    private readonly CutFinder finder;
    private readonly CriticalRelays critical;
    private readonly UsefulOutlets useful;
    private readonly NodeSet absent;
    private readonly int[] hops;
    private readonly int[][] devicesByLost;
    private readonly int[][] lostByDevice;
    private readonly int[] devices;
    private readonly StartHops[] starts;

    /// <summary>Sets the goal.</summary>
    /// <param name="graph">The links that count.</param>
    /// <param name="survivals">Who must survive what.</param>
    /// <param name="absent">Nodes that are off anyway.</param>
    public SurvivalGoal(ReachGraph graph, Survivals survivals, NodeSet absent)
    {
        Graph = graph;
        this.survivals = survivals;
        this.absent = absent;
        RepeaterProblem problem = graph.Problem;
        hops = new int[problem.NodeCount];
        finder = new(graph);
        critical = new(graph);
        useful = new(graph, absent);
        NodeSet nothing = graph.NothingChosen();
        devicesByLost = DevicesByLost(nothing);
        var pairs = devicesByLost.SelectMany((survivors, lost) => survivors.Select(device => (device, lost))).ToLookup(pair => pair.device, pair => pair.lost);
        lostByDevice = [.. Enumerable.Range(0, problem.DeviceCount).Select(device => pairs[device].ToArray())];
        devices = [.. Enumerable.Range(0, problem.DeviceCount).Where(device => lostByDevice[device].Length > 0)];
        starts = [.. Enumerable.Range(0, problem.DeviceCount).Select(lost => new StartHops(graph, Present(nothing, lost)))];
    }

    /// <inheritdoc/>
    public ReachGraph Graph { get; }

    /// <summary>Whether nothing need be survived.</summary>
    public bool IsEmpty => devices.Length == 0;

    /// <inheritdoc/>
    public bool LosesOutlets => Array.Exists(devicesByLost[Graph.Problem.DeviceCount..], survivors => survivors.Length > 0);

    /// <inheritdoc/>
    public bool IsMet(NodeSet passing) => !Violations(passing).Any();

    /// <inheritdoc/>
    public NodeSet StandInsFor(int outlet) => Graph.StandInsFor(Graph.Problem.NodeOf(outlet), absent);

    /// <inheritdoc/>
    public IEnumerable<Cut> CutsMissedBy(NodeSet chosen)
    {
        foreach ((int lost, int device) in Violations(chosen).ToList())
        {
            (int[] byDevice, int[] fromCoordinator) = useful.To(device);
            if (lost < Graph.Problem.DeviceCount)
            {
                foreach (int[] cut in finder.Disjoint(device, Present(chosen, lost), fromCoordinator)) yield return Cut.One(cut);
                foreach (int[] cut in finder.Disjoint(device, Present(chosen, lost), byDevice)) yield return Cut.One(cut);
                continue;
            }

            // What is short of the device without the outlet is so everyday when the outlet is not chosen: with it, an everyday cut.
            int outlet = lost - Graph.Problem.DeviceCount;
            foreach (int[] order in new[] { fromCoordinator, byDevice })
            {
                int[] others = Array.FindAll(order, other => other != outlet);
                if (finder.Grow(device, Present(chosen, lost), others) is { } rest) yield return survivals.Strengthened([.. rest.Append(outlet).Order()], device);
            }
        }
    }

    /// <summary>The losses of routers alone: those of outlets are in the cuts that need two.</summary>
    public IEnumerable<Cut> CutsMissedBy(double[] shares, int[] byShare)
    {
        for (int lost = 0; lost < starts.Length; lost++)
        {
            foreach (int device in devicesByLost[lost])
                if (finder.Grow(device, starts[lost], useful.InOrder(device, byShare), shares, need: 1) is { } cut) yield return Cut.One(cut);
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<int> OutletsThatMayHelp(NodeSet passing)
    {
        foreach ((int lost, int device) in Violations(passing))
        {
            NodeSet present = Present(passing, lost);
            Graph.CountHops(Graph.Problem.Coordinator, present, hops);
            return useful.ThatConnect(device, present, hops);
        }

        return [];
    }

    /// <summary>Per lost node the devices that decide of those that need an outlet then.</summary>
    private int[][] DevicesByLost(NodeSet nothing)
    {
        int[][] byLost = [.. Enumerable.Repeat(Array.Empty<int>(), Graph.Problem.NodeCount)];
        critical.Find(nothing.Without(absent));
        NodeSet matters = critical.OnAny(survivals.Losses.SelectMany(demand => demand.Devices).Distinct().Where(IsReached));
        (ImmutableArray<int> Devices, int[] Hardest) last = ([], []);
        foreach (Demand demand in survivals.Losses)
        {
            // Whoever is lost that not all shortest ways to some device pass, those that are out of reach are the same; mostly it is all of them again.
            ImmutableArray<int> needy = matters.Contains(demand.Lost!.Value)
                ? demand.Reached(Graph, nothing, isReached: false)
                : [.. demand.Devices.Where(device => !IsReached(device))];
            if (!needy.SequenceEqual(last.Devices)) last = (needy, [.. HardestDevices.Of(Graph, needy)]);
            byLost[demand.Lost!.Value] = last.Hardest;
        }

        return byLost;

        bool IsReached(int device) => critical.Hops[device] <= Graph.Problem.HopLimit;
    }

    private NodeSet Present(NodeSet passing, int lost)
    {
        NodeSet present = passing.Without(absent);
        present.Remove(lost);
        return present;
    }

    /// <summary>
    /// The losses that are not survived. A device that is out of reach with nothing lost is named for the first router that it
    /// must survive.
    /// </summary>
    private IEnumerable<(int Lost, int Device)> Violations(NodeSet passing)
    {
        int limit = Graph.Problem.HopLimit;
        critical.Find(passing.Without(absent));
        SortedSet<int> suspects = [];
        List<(int Lost, int Device)> violations = [];
        foreach (int device in devices)
        {
            if (critical.Hops[device] <= limit) suspects.UnionWith(critical.On(device).Where(lost => Array.BinarySearch(lostByDevice[device], lost) >= 0));
            else if (lostByDevice[device][0] < Graph.Problem.DeviceCount) violations.Add((lostByDevice[device][0], device));
        }

        foreach ((int Lost, int Device) violation in violations) yield return violation;
        int[] left = [.. suspects];
        foreach (int lost in left)
        {
            int[] without = new int[hops.Length];
            Graph.CountHops(Graph.Problem.Coordinator, Present(passing, lost), without);
            foreach (int device in devicesByLost[lost])
                if (without[device] > limit && critical.Hops[device] <= limit) yield return (lost, device);
        }
    }
}
