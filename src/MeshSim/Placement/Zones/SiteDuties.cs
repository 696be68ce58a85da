using System.Collections.Immutable;

namespace MeshSim.Placement.Zones;

/// <summary>
/// What a repeater, or the hub, must do at whatever place it stands so that everything is reached that the recommendation reaches,
/// all else staying where it is. A place is judged by its links alone, so a million places can be asked.
/// </summary>
internal sealed class SiteDuties
{
    private readonly ImmutableArray<ImmutableArray<SiteDuty>> ofSituations;

    private SiteDuties(IEnumerable<SiteDuty> duties, int hopLimit)
    {
        // The fewer the ways, the sooner a duty binds; the others are then asked for no more than that.
        ofSituations = [.. duties.GroupBy(duty => duty.Situation).Select(group => ImmutableArray.CreateRange(group.OrderBy(duty => duty.Exits.Count)))];
        HopLimit = hopLimit;
    }

    /// <summary>Most links in a row.</summary>
    public int HopLimit { get; }

    /// <summary>Whether nobody needs it: any place does.</summary>
    public bool AreNone => ofSituations.IsEmpty;

    /// <summary>The situations in which somebody needs it.</summary>
    public IEnumerable<int> Situations => ofSituations.Select(duties => duties[0].Situation);

    /// <summary>The duties of one chosen outlet.</summary>
    /// <param name="placement">The recommendation.</param>
    /// <param name="choice">The outlet.</param>
    public static SiteDuties OfRepeater(SurveyedPlacement placement, int choice)
    {
        int site = placement.Survey.Problem.NodeOf(choice), nodeCount = placement.Survey.Problem.NodeCount;
        return new(
            from entry in placement.Cases()
            where !entry.Demand.Absent.Contains(site)
            let passing = entry.Graph.Chosen(placement.Chosen.Remove(choice)).Without(entry.Demand.Absent)
            let reached = HopsFrom(placement.Survey.Problem.Coordinator, entry.Graph, passing)
            let entries = new DutyEnds(reached.Usable(), nodeCount)
            from device in entry.Demand.Devices
            where reached.Hops[device] > placement.Survey.Problem.HopLimit
            select new SiteDuty(entry.Demand.Situation, entries, new(HopsFrom(device, entry.Graph, passing).Usable(), nodeCount)),
            placement.Survey.Problem.HopLimit);
    }

    /// <summary>The duties of the coordinator.</summary>
    /// <param name="placement">The recommendation.</param>
    public static SiteDuties OfHub(SurveyedPlacement placement)
    {
        int hub = placement.Survey.Problem.Coordinator, limit = placement.Survey.Problem.HopLimit;
        HashSet<(int, string)> known = [];
        List<(int Situation, NodeSet Exits)> asked = [];
        foreach ((Demand demand, ReachGraph graph) in placement.Cases())
        {
            NodeSet passing = graph.Chosen(placement.Chosen).Without(demand.Absent);
            passing.Remove(hub);
            foreach (int device in demand.Devices)
            {
                NodeSet exits = HopsFrom(device, graph, passing).UsableNodes();
                if (known.Add((demand.Situation, string.Join(' ', exits.Words)))) asked.Add((demand.Situation, exits));
            }
        }

        return new(asked.GroupBy(entry => entry.Situation, entry => entry.Exits).SelectMany(group => Least(group).Select(exits => OfHub(group.Key, exits))), limit);

        SiteDuty OfHub(int situation, NodeSet exits) => new(situation, null, new(exits.Nodes.Select(node => (node, 0)), placement.Survey.Problem.NodeCount));
    }

    /// <summary>
    /// Of the exits of the coordinator's duties those that hold no other's. To be heard by any one is all that is asked of it, however many links
    /// follow, so whoever is heard by one of the fewer is heard by one of the more.
    /// </summary>
    private static List<NodeSet> Least(IEnumerable<NodeSet> exits)
    {
        List<NodeSet> least = [];
        foreach (NodeSet nodes in exits.OrderBy(nodes => nodes.Count))
            if (!least.Exists(fewer => fewer.IsWithin(nodes))) least.Add(nodes);
        return least;
    }

    /// <summary>
    /// The margin up to which the links of a place can be asked for without anybody being lost: at the design margin or above, the
    /// place does as well, and what is above is to spare. Infinite when nobody needs it, minus infinity when no strength would do.
    /// </summary>
    /// <param name="marginsDb">Per situation and node the margin of a link with the place, dB.</param>
    public double StrengthDb(double[][] marginsDb)
    {
        double strengthDb = double.PositiveInfinity;
        foreach (ImmutableArray<SiteDuty> duties in ofSituations)
        {
            double[] situationDb = marginsDb[duties[0].Situation];
            NodeSet strong = new(situationDb.Length);
            Mark();
            foreach (SiteDuty duty in duties)
            {
                if (duty.IsDoneOver(strong, HopLimit)) continue;
                strengthDb = duty.StrengthDb(situationDb, HopLimit);
                if (double.IsNegativeInfinity(strengthDb)) return strengthDb;
                Mark();
            }

            void Mark() => strong.SetToAtLeast(strengthDb, situationDb);
        }

        return strengthDb;
    }

    private static HopField HopsFrom(int source, ReachGraph graph, NodeSet passing)
    {
        int[] hops = new int[graph.Problem.NodeCount];
        graph.CountHops(source, passing, hops);
        return new(hops, source, passing, graph.Problem.HopLimit);
    }

    /// <summary>Fewest links from a node to all others.</summary>
    private sealed record HopField(int[] Hops, int Source, NodeSet Passing, int Limit)
    {
        /// <summary>The nodes over which one could go on, without their links.</summary>
        public NodeSet UsableNodes()
        {
            NodeSet nodes = new(Hops.Length);
            for (int node = 0; node < Hops.Length; node++)
                if (IsUsable(node)) nodes.Add(node);
            return nodes;
        }

        /// <summary>The nodes over which one could go on, the source itself among them.</summary>
        public ImmutableArray<(int Node, int Hops)> Usable() =>
        [
            .. Enumerable.Range(0, Hops.Length)
                .Where(IsUsable)
                .Select(node => (node, Hops[node])),
        ];

        private bool IsUsable(int node) => Hops[node] < Limit && (node == Source || Passing.Contains(node));
    }
}
