using System.Collections.Immutable;
using CsCheck;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Radio;

namespace MeshSim.Tests.Mesh;

public sealed class ParentChoicesTests
{
    private const int Graphs = 1000;

    [Fact]
    public void Parents_are_the_first_relays_of_the_best_routes_that_begin_differently() =>
        Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[2, 8], Gen.Int[1, 6]).Sample(
            (seed, devices, hopLimit) =>
            {
                MeshGraph graph = MeshSamples.RandomGraph(seed, devices, hopLimit, isTied: false);
                ImmutableArray<ImmutableArray<ParentChoice>> parents = ParentChoices.Of(graph);
                for (int node = 1; node < devices; node++)
                {
                    (int Parent, double Etx)[] best = graph.Relays(node) ? [] :
                    [
                        .. AllRoutes.From(graph, [node], hopLimit)
                            .GroupBy(route => route.Path[1], (parent, routes) => (parent, routes.Min(route => route.Etx)))
                            .OrderBy(choice => choice.Item2)
                            .Take(2),
                    ];
                    parents[node].Select(choice => choice.Parent).Should().Equal(best.Select(choice => graph.Devices[choice.Parent]));
                    parents[node].Select(choice => choice.Etx).Should().Equal(best.Select(choice => choice.Etx));
                }
            },
            iter: Graphs);

    [Fact]
    public void Each_choice_tells_the_margin_of_its_link_and_its_hops()
    {
        MeshGraph graph = MeshSamples.Graph(
            MeshSamples.Network(hopLimit: 4),
            [Role.Router, Role.EndDevice],
            MeshSamples.Link(0, 1),
            MeshSamples.Link(0, 2, delivery: 0.25, marginDb: 7),
            MeshSamples.Link(1, 2, marginDb: 18));
        Routing.ReachOf(graph)[1].Parents.Should().Equal(
            new ParentChoice(MeshSamples.Id(1), new(18), 2, 2),
            new ParentChoice(MeshSamples.Id(0), new(7), 4, 1));
    }

    [Fact]
    public void In_a_star_the_coordinator_is_the_only_parent()
    {
        MeshGraph graph = MeshSamples.Graph(
            MeshSamples.Network(hopLimit: 1, Topology.Star), [Role.Router, Role.EndDevice], MeshSamples.Link(0, 2), MeshSamples.Link(1, 2));
        Routing.ReachOf(graph)[1].Parents.Select(choice => choice.Parent).Should().Equal(MeshSamples.Id(0));
    }
}
