using CsCheck;
using MeshSim.Placement.Trees;
using QuikGraph;
using QuikGraph.Algorithms.MaximumFlow;

namespace MeshSim.Tests.Placement.Trees;

public sealed class ShareFlowTests
{
    private const int Networks = 400;
    private const int Pairs = 3;

    // Shares are thirds here, so sums differ by a third or not at all; the flow adds a millionth per entry.
    private const double Rounding = 1e-3;

    [Fact]
    public void The_smallest_cut_is_as_large_as_the_largest_flow_that_the_flow_library_finds() =>
        Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[0, int.MaxValue]).Sample(
            (seed, shareSeed) =>
            {
                RouteNetwork network = NetworkSample.Random(seed, isHopLimited: false);
                var random = new Random(shareSeed);
                int[] thirds = [.. Enumerable.Range(0, network.ArcCount).Select(_ => random.Next(0, 4))];
                double[] shares = [.. thirds.Select(third => third / 3.0)];
                ShareFlow flow = new(network);
                foreach (int device in network.Devices)
                {
                    int[][] cuts = [.. flow.CutsMissedBy(shares, NetworkSample.AllOpen(network), device, Pairs)];
                    double largest = Math.Min(1, LargestFlow(network, thirds, device) / 3.0);
                    (cuts.Length > 0).Should().Be(largest < 1 - Rounding);
                    if (cuts.Length == 0) continue;
                    cuts[0].Sum(arc => shares[arc]).Should().BeApproximately(largest, Rounding);
                    cuts.Should().OnlyContain(cut => cut.Sum(arc => shares[arc]) >= largest - Rounding);
                }
            },
            iter: Networks);

    [Fact]
    public void Both_ends_of_a_chain_give_a_cut()
    {
        // Coordinator, two sites in a row of which a third is chosen, one device: cutting either does.
        RouteNetwork network = new([0, 1, 1, 0], [true, true, true, false], [[1], [0, 2], [1, 3], [2]], 0, [3], hopLimit: 4);
        double[] shares = [.. Enumerable.Range(0, network.ArcCount).Select(_ => 1 / 3.0)];
        int[][] cuts = [.. new ShareFlow(network).CutsMissedBy(shares, NetworkSample.AllOpen(network), 3, 1)];
        cuts.Select(cut => cut.Single()).Select(arc => (network.Tail(arc), network.Head(arc))).Should().Equal((1, 2), (0, 1));
    }

    private static int LargestFlow(RouteNetwork network, int[] capacities, int device)
    {
        var graph = new AdjacencyGraph<int, TaggedEdge<int, int>>();
        graph.AddVertexRange(Enumerable.Range(0, network.NodeCount));
        for (int arc = 0; arc < network.ArcCount; arc++)
            graph.AddEdge(new(network.Tail(arc), network.Head(arc), network.Cost(arc) == 0 ? capacities.Length * 3 : capacities[arc]));
        EdgeFactory<int, TaggedEdge<int, int>> factory = (from, to) => new(from, to, 0);
        using var reversed = new ReversedEdgeAugmentorAlgorithm<int, TaggedEdge<int, int>>(graph, factory);
        reversed.AddReversedEdges();
        var flow = new EdmondsKarpMaximumFlowAlgorithm<int, TaggedEdge<int, int>>(graph, edge => edge.Tag, factory, reversed);
        flow.Compute(network.Coordinator, device);
        return (int)flow.MaxFlow;
    }
}
