using CsCheck;
using MeshSim.Devices;
using MeshSim.Mesh;
using QuikGraph;
using QuikGraph.Algorithms.MaximumFlow;

namespace MeshSim.Tests.Mesh;

public sealed class DisjointRoutesTests
{
    /// <summary>Random graphs compared with the flow library, every device of each.</summary>
    private const int Graphs = 400;

    [Fact]
    public void The_count_is_the_largest_flow_that_the_flow_library_finds() =>
        Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[2, 14]).Sample(
            (seed, devices) =>
            {
                MeshGraph graph = MeshSamples.RandomGraph(seed, devices, hopLimit: 1, isTied: false);
                var ours = new DisjointRoutes(graph);
                for (int node = 1; node < devices; node++)
                    ours.Count(node).Should().Be(LargestFlow(graph, node));
            },
            iter: Graphs);

    [Fact]
    public void A_direct_link_counts_as_one_and_shared_routers_once()
    {
        MeshGraph graph = MeshSamples.Graph(
            MeshSamples.Network(hopLimit: 2),
            [Role.Router, Role.Router, Role.Router, Role.EndDevice],
            MeshSamples.Link(0, 4),
            MeshSamples.Link(0, 1),
            MeshSamples.Link(0, 2),
            MeshSamples.Link(1, 4),
            MeshSamples.Link(1, 3),
            MeshSamples.Link(3, 4));
        new DisjointRoutes(graph).Count(4).Should().Be(2, "the ways over d01 and over d03 and d01 share d01");
    }

    [Fact]
    public void The_coordinator_itself_has_no_count()
    {
        MeshGraph graph = MeshSamples.Graph(MeshSamples.Network(hopLimit: 2), [Role.Router], MeshSamples.Link(0, 1));
        FluentActions.Invoking(() => new DisjointRoutes(graph).Count(0)).Should().Throw<ArgumentOutOfRangeException>();
    }

    private static int LargestFlow(MeshGraph graph, int source)
    {
        var split = new AdjacencyGraph<int, Edge<int>>();
        int count = graph.Devices.Length;
        split.AddVertexRange(Enumerable.Range(0, 2 * count));
        for (int node = 0; node < count; node++)
        {
            if (graph.Relays(node) && node != graph.Coordinator) split.AddEdge(new Edge<int>(node, count + node));
            foreach ((int next, Link _) in graph.UsableLinks(node))
                if (node != graph.Coordinator && graph.Relays(next)) split.AddEdge(new Edge<int>(count + node, next));
        }

        EdgeFactory<int, Edge<int>> factory = (from, to) => new Edge<int>(from, to);
        using var reversed = new ReversedEdgeAugmentorAlgorithm<int, Edge<int>>(split, factory);
        reversed.AddReversedEdges();
        HashSet<Edge<int>> added = [.. reversed.AugmentedEdges];
        var flow = new EdmondsKarpMaximumFlowAlgorithm<int, Edge<int>>(split, edge => added.Contains(edge) ? 0 : 1, factory, reversed);
        flow.Compute(count + source, graph.Coordinator);
        return (int)flow.MaxFlow;
    }
}
