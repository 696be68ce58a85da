using CsCheck;
using MeshSim.Placement;
using QuikGraph;
using QuikGraph.Algorithms.MaximumFlow;

namespace MeshSim.Tests.Placement;

public sealed class CutFinderTests
{
    private const int Problems = 100;

    [Fact]
    public void Without_its_cut_a_device_is_cut_off_and_any_one_of_it_brings_it_back() =>
        Gen.Select(ProblemSample.Any, Gen.Int[0, 255], Gen.Int[0, int.MaxValue]).Sample((sample, subset, seed) =>
        {
            ExhaustivePlacement oracle = new(sample);
            RepeaterProblem problem = sample.Problem();
            ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin);
            int[] order = [.. Enumerable.Range(0, sample.OutletCount)];
            int[] chosen = [.. order.Where(outlet => (subset >> outlet & 1) != 0)];
            int everything = ExhaustivePlacement.SubsetOf(order);
            new Random(seed).Shuffle(order);
            CutFinder finder = new(graph);
            for (int device = 1; device < sample.Relays.Length; device++)
            {
                int[]? cut = finder.Grow(device, graph.Chosen(chosen), order);
                (cut is null).Should().Be(oracle.ServesDevice(device, ExhaustivePlacement.SubsetOf(chosen)));
                if (cut is null) continue;

                int rest = everything & ~ExhaustivePlacement.SubsetOf(cut);
                cut.Should().BeInAscendingOrder().And.NotIntersectWith(chosen);
                oracle.ServesDevice(device, rest).Should().BeFalse();
                Array.TrueForAll(cut, outlet => oracle.ServesDevice(device, rest | (1 << outlet))).Should().BeTrue();
            }
        });

    [Fact]
    public void From_counted_hops_the_same_cuts_are_found_and_those_that_shares_cannot_miss_are_given_up() =>
        Gen.Select(ProblemSample.Any, Gen.Int[0, 8].Array[8], Gen.Int[0, int.MaxValue]).Sample((sample, drawn, seed) =>
        {
            RepeaterProblem problem = sample.Problem();
            ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin);
            double[] shares = [.. drawn.Take(sample.OutletCount).Select(eighths => eighths / 8.0)];
            int[] order = [.. Enumerable.Range(0, sample.OutletCount)];
            new Random(seed).Shuffle(order);
            CutFinder finder = new(graph);
            StartHops start = new(graph, graph.NothingChosen());
            for (int device = 1; device < sample.Relays.Length; device++)
            {
                int[]? cut = finder.Grow(device, graph.NothingChosen(), order);
                int[]? expected = cut?.Sum(outlet => shares[outlet]) < 1 ? cut : null;

                // Twice, because the first must not change what the second begins with.
                for (int time = 0; time < 2; time++) finder.Grow(device, start, order, shares, need: 1).Should().BeEquivalentTo(expected);
            }
        });

    [Fact]
    public void The_smallest_of_all_cuts_is_the_largest_flow_that_the_flow_library_finds() =>
        ProblemSample.Any.Select(sample => sample with { HopLimit = sample.NodeCount }).Sample(
            sample =>
            {
                RepeaterProblem problem = sample.Problem();
                ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin);
                CutFinder finder = new(graph);
                int[] outlets = [.. Enumerable.Range(0, sample.OutletCount)];
                for (int device = 1; device < sample.Relays.Length; device++)
                {
                    // Whatever the smallest cut is, one of these orders adds everything else first.
                    int[]?[] cuts =
                    [
                        .. Enumerable.Range(0, 1 << outlets.Length)
                            .Select(subset => finder.Grow(device, graph.NothingChosen(), [.. outlets.OrderBy(outlet => subset >> outlet & 1)])),
                    ];
                    int largest = LargestFlow(sample, device);
                    (cuts[0] is null).Should().Be(largest > sample.OutletCount, "a flow beyond the outlets needs none of them");
                    if (cuts[0] is not null) cuts.Min(cut => cut!.Length).Should().Be(largest);
                }
            },
            iter: Problems);

    [Fact]
    public void Beside_the_device_one_outlet_is_the_cut_and_beside_the_coordinator_two()
    {
        // The coordinator hears outlets 0 and 1, both hear outlet 2, which alone hears the device: nodes 0 coordinator, 1 device, 2 to 4.
        (int, int)[] links = [(0, 2), (0, 3), (2, 4), (3, 4), (1, 4)];
        RepeaterProblem problem = new([true, false], 0, 3, 3, new(6), (a, b) => new(links.Contains((a, b)) ? 10 : -30));
        ReachGraph graph = problem.LinksAtLeast(problem.DesignMargin);
        CutFinder finder = new(graph);
        finder.Grow(1, graph.NothingChosen(), [0, 1, 2]).Should().Equal(2);
        finder.Grow(1, graph.NothingChosen(), [2, 1, 0]).Should().Equal(0, 1);
        finder.Grow(1, graph.Chosen([0, 2]), [1]).Should().BeNull();
    }

    /// <summary>Each outlet passes one unit, everything else as much as comes.</summary>
    private static int LargestFlow(ProblemSample sample, int device)
    {
        int count = sample.NodeCount, boundless = 2 * count;
        var split = new AdjacencyGraph<int, TaggedEdge<int, int>>();
        split.AddVertexRange(Enumerable.Range(0, 2 * count));
        for (int a = 0; a < count; a++)
        {
            bool isOutlet = a >= sample.Relays.Length;
            if (isOutlet || sample.Relays[a]) split.AddEdge(new(a, count + a, isOutlet ? 1 : boundless));
            for (int b = 0; b < count; b++)
                if (a != b && sample.MarginsDb[a, b] >= sample.DesignMarginDb) split.AddEdge(new(count + a, b, boundless));
        }

        EdgeFactory<int, TaggedEdge<int, int>> factory = (from, to) => new(from, to, 0);
        using var reversed = new ReversedEdgeAugmentorAlgorithm<int, TaggedEdge<int, int>>(split, factory);
        reversed.AddReversedEdges();
        var flow = new EdmondsKarpMaximumFlowAlgorithm<int, TaggedEdge<int, int>>(split, edge => edge.Tag, factory, reversed);
        flow.Compute(0, device);
        return (int)flow.MaxFlow;
    }
}
