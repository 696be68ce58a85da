using System.Collections.Immutable;

namespace MeshSim.Placement.Zones;

/// <summary>
/// What a repeater, or the hub, must do at whatever place it stands so that everything is reached that the recommendation reaches,
/// all else staying where it is. A place is judged by its links alone, so a million places can be asked.
/// </summary>
internal sealed class SiteDuties
{
    private readonly ImmutableArray<SiteDuty> duties;

    private SiteDuties(IEnumerable<SiteDuty> duties, int hopLimit)
    {
        this.duties = [.. duties];
        HopLimit = hopLimit;
    }

    /// <summary>Most links in a row.</summary>
    public int HopLimit { get; }

    /// <summary>Whether nobody needs it: any place does.</summary>
    public bool AreNone => duties.IsEmpty;

    /// <summary>The situations in which somebody needs it.</summary>
    public IEnumerable<int> Situations => duties.Select(duty => duty.Situation).Distinct();

    /// <summary>The duties of one chosen outlet.</summary>
    /// <param name="placement">The recommendation.</param>
    /// <param name="choice">The outlet.</param>
    public static SiteDuties OfRepeater(SurveyedPlacement placement, int choice)
    {
        int site = placement.Survey.Problem.NodeOf(choice);
        return new(
            from entry in placement.Cases()
            where !entry.Demand.Absent.Contains(site)
            let passing = entry.Graph.Chosen(placement.Chosen.Remove(choice)).Without(entry.Demand.Absent)
            let entries = HopsFrom(placement.Survey.Problem.Coordinator, entry.Graph, passing)
            from device in entry.Demand.Devices
            where entries.Hops[device] > placement.Survey.Problem.HopLimit
            select new SiteDuty(entry.Demand.Situation, entries.Usable(), HopsFrom(device, entry.Graph, passing).Usable()),
            placement.Survey.Problem.HopLimit);
    }

    /// <summary>The duties of the coordinator.</summary>
    /// <param name="placement">The recommendation.</param>
    public static SiteDuties OfHub(SurveyedPlacement placement)
    {
        int hub = placement.Survey.Problem.Coordinator, limit = placement.Survey.Problem.HopLimit;
        Dictionary<(int, string), SiteDuty> distinct = [];
        foreach ((Demand demand, ReachGraph graph) in placement.Cases())
        {
            NodeSet passing = graph.Chosen(placement.Chosen).Without(demand.Absent);
            passing.Remove(hub);
            foreach (int device in demand.Devices)
            {
                ImmutableArray<(int Node, int Hops)> exits = [.. HopsFrom(device, graph, passing).Usable().Where(exit => exit.Node != hub && exit.Hops < limit)];

                // To be heard by any one of these is all that is asked, so devices that could be entered by the same ones ask the same.
                distinct.TryAdd((demand.Situation, string.Join(' ', exits.Select(exit => exit.Node))), new(demand.Situation, [], exits));
            }
        }

        return new(distinct.Values, limit);
    }

    /// <summary>
    /// The margin up to which the links of a place can be asked for without anybody being lost: at the design margin or above, the
    /// place does as well, and what is above is to spare. Infinite when nobody needs it, minus infinity when no strength would do.
    /// </summary>
    /// <param name="marginsDb">Per situation and node the margin of a link with the place, dB.</param>
    public double StrengthDb(double[][] marginsDb)
    {
        double strengthDb = double.PositiveInfinity;
        foreach (SiteDuty duty in duties)
            strengthDb = Math.Min(strengthDb, duty.StrengthDb(marginsDb[duty.Situation], HopLimit));
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
        /// <summary>The nodes over which one could go on, the source itself among them.</summary>
        public ImmutableArray<(int Node, int Hops)> Usable() =>
        [
            .. Enumerable.Range(0, Hops.Length)
                .Where(node => Hops[node] < Limit && (node == Source || Passing.Contains(node)))
                .Select(node => (node, Hops[node])),
        ];
    }
}
