using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Placement.Zones;
using MeshSim.Tests.Mesh;

namespace MeshSim.Tests.Placement.Zones;

/// <summary>How strong a place is, against every duty taken in full: to the last bit.</summary>
public sealed class SiteDutiesTests
{
    private const int Graphs = 250;
    private const int PlacesPerGraph = 20;

    [Fact]
    public void In_random_graphs_the_hub_is_as_strong_as_its_weakest_duty()
    {
        int able = 0, unable = 0;
        for (int seed = 0; seed < Graphs; seed++)
        {
            SurveyedPlacement placement = Placement(seed);
            SiteDuties duties = SiteDuties.OfHub(placement);
            foreach (double[][] marginsDb in Places(placement, seed))
                Compare(duties.StrengthDb(marginsDb), new PlainDuties(placement, null).StrengthDb(marginsDb), seed, ref able, ref unable);
        }

        able.Should().BeGreaterThan(Graphs);
        unable.Should().BePositive("some hubs reach nobody: any place does");
    }

    [Fact]
    public void In_random_graphs_a_repeater_is_as_strong_as_its_weakest_duty()
    {
        int able = 0, unable = 0;
        for (int seed = 0; seed < Graphs; seed++)
        {
            SurveyedPlacement placement = Placement(seed);
            foreach (int choice in placement.Chosen)
            {
                SiteDuties duties = SiteDuties.OfRepeater(placement, choice);
                PlainDuties plain = new(placement, choice);
                duties.AreNone.Should().Be(plain.AreNone, "seed {0}", seed);
                duties.Situations.Order().Should().Equal(plain.Situations.Order(), "seed {0}", seed);
                foreach (double[][] marginsDb in Places(placement, seed))
                    Compare(duties.StrengthDb(marginsDb), plain.StrengthDb(marginsDb), seed, ref able, ref unable);
            }
        }

        new[] { able, unable }.Should().OnlyContain(count => count > Graphs, "both kinds of answers must occur");
    }

    [Fact]
    public void Whoever_hears_nothing_at_a_place_leaves_it_no_strength()
    {
        // The end device hears nobody but an outlet that nothing is plugged into any more.
        SurveyedPlacement placement = PlacementOf(seed: 0, relays: [true, false], outlets: 1, hopLimit: 2, ways: 1, (a, b) => a + b == 1 ? -1 : 10, [0]);
        SiteDuties duties = SiteDuties.OfRepeater(placement, 0);
        duties.AreNone.Should().BeFalse();
        double[] unheardDb = [10, double.NegativeInfinity, 0], heardDb = [10, 7, 0];
        duties.StrengthDb([unheardDb, unheardDb]).Should().Be(double.NegativeInfinity);
        duties.StrengthDb([heardDb, heardDb]).Should().Be(7, "the weaker of its two links");
    }

    private static void Compare(double strengthDb, double plainDb, int seed, ref int able, ref int unable)
    {
        strengthDb.Should().Be(plainDb, "seed {0}", seed);
        if (double.IsFinite(strengthDb)) able++;
        else unable++;
    }

    /// <summary>More nodes than a word of bits holds, so sparse that the loss of one counts, some of them off in a second situation.</summary>
    private static SurveyedPlacement Placement(int seed)
    {
        var random = new Random(seed);
        int devices = random.Next(8, 50), outlets = random.Next(2, 40);
        double density = (1.5 + (3 * random.NextDouble())) / Math.Sqrt(devices + outlets) / 2;
        ImmutableArray<bool> relays = [.. Enumerable.Range(0, devices).Select(device => device == 0 || random.Next(3) == 0)];
        double[,] marginsDb = new double[devices + outlets, devices + outlets];
        for (int a = 0; a < devices + outlets; a++)
            for (int b = a + 1; b < devices + outlets; b++) marginsDb[a, b] = random.NextDouble() < density ? 10 : -10;
        ImmutableArray<int> chosen = [.. Enumerable.Range(0, outlets).Where(_ => random.Next(3) == 0)];
        return PlacementOf(seed, relays, outlets, random.Next(1, 7), 1 + random.Next(2), (a, b) => marginsDb[a, b], chosen);
    }

    private static SurveyedPlacement PlacementOf(int seed, ImmutableArray<bool> relays, int outlets, int hopLimit, int ways, Func<int, int, double> marginDb, ImmutableArray<int> chosen)
    {
        var random = new Random(seed);
        RepeaterProblem problem = new(relays, 0, outlets, hopLimit, MeshSamples.DesignMargin, (a, b) => new(marginDb(a, b)));
        ImmutableArray<int> off = [.. Enumerable.Range(1, relays.Length + outlets - 1).Where(_ => random.Next(8) == 0)];
        Home home = PlacedHomes.Row(hopLimit, [.. Enumerable.Range(1, relays.Length - 1)], [.. Enumerable.Range(0, outlets)]);
        RepeaterSurvey survey = new([Situation.WithAllPower(problem), new(problem, off)], home.Devices, home.Outlets, []);
        return new(home, home.Networks[0], survey, [], [null, "night"], ways, chosen);
    }

    /// <summary>Margins of links with random places; of every other place whole ones, so that ties are common.</summary>
    private static IEnumerable<double[][]> Places(SurveyedPlacement placement, int seed)
    {
        var random = new Random(seed);
        for (int place = 0; place < PlacesPerGraph; place++)
        {
            yield return [.. placement.Survey.Situations.Select(situation => Enumerable.Range(0, situation.Problem.NodeCount).Select(_ => MarginDb(place)).ToArray())];
        }

        double MarginDb(int place)
        {
            double marginDb = (40 * random.NextDouble()) - 20;
            return place % 2 == 0 ? marginDb : Math.Round(marginDb / 8);
        }
    }

    /// <summary>Every device of every case, over every entry and every exit.</summary>
    private sealed class PlainDuties
    {
        private readonly List<(int Situation, List<(int Entry, int Exit)> Ways)> duties = [];
        private readonly bool isHub;

        public PlainDuties(SurveyedPlacement placement, int? choice)
        {
            isHub = choice is null;
            RepeaterProblem problem = placement.Survey.Problem;
            int site = choice is { } outlet ? problem.NodeOf(outlet) : problem.Coordinator;
            foreach ((Demand demand, ReachGraph graph) in placement.Cases().Where(entry => !entry.Demand.Absent.Contains(site)))
            {
                NodeSet passing = graph.Chosen(placement.Chosen).Without(demand.Absent);
                passing.Remove(site);
                int[] there = HopsFrom(problem.Coordinator, graph, passing);
                foreach (int device in demand.Devices.Where(device => isHub || there[device] > problem.HopLimit))
                {
                    int[] back = HopsFrom(device, graph, passing);
                    int[] exits = [.. Enumerable.Range(0, back.Length).Where(node => node == device || (passing.Contains(node) && back[node] <= problem.HopLimit))];
                    int[] entries = [.. Enumerable.Range(0, there.Length).Where(node => node == problem.Coordinator || (passing.Contains(node) && there[node] <= problem.HopLimit))];
                    duties.Add((demand.Situation, isHub
                        ? [.. exits.Where(exit => back[exit] + 1 <= problem.HopLimit).Select(exit => (exit, exit))]
                        : [.. from entry in entries from exit in exits where there[entry] + 2 + back[exit] <= problem.HopLimit select (entry, exit)]));
                }
            }
        }

        public bool AreNone => duties.Count == 0;

        public IEnumerable<int> Situations => duties.Select(duty => duty.Situation).Distinct();

        public double StrengthDb(double[][] marginsDb) => duties
            .Select(duty => duty.Ways.Select(way => Math.Min(marginsDb[duty.Situation][way.Entry], marginsDb[duty.Situation][way.Exit])).Append(double.NegativeInfinity).Max())
            .Append(double.PositiveInfinity)
            .Min();

        private static int[] HopsFrom(int source, ReachGraph graph, NodeSet passing)
        {
            int[] hops = new int[graph.Problem.NodeCount];
            graph.CountHops(source, passing, hops);
            return hops;
        }
    }
}
