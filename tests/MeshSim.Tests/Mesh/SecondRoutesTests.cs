using System.Collections.Immutable;
using CsCheck;
using MeshSim.Devices;
using MeshSim.Mesh;

namespace MeshSim.Tests.Mesh;

public sealed class SecondRoutesTests
{
    private const int Graphs = 1000;

    [Fact]
    public void The_second_route_is_the_best_of_all_that_share_no_relay_with_the_first() =>
        Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[2, 8], Gen.Int[1, 6]).Sample(
            (seed, devices, hopLimit) =>
            {
                MeshGraph graph = MeshSamples.RandomGraph(seed, devices, hopLimit, isTied: false);
                ImmutableArray<Route?> first = Routing.LeastEtx(graph);
                ImmutableArray<Route?> second = SecondRoutes.Of(graph, first);
                for (int node = 1; node < devices; node++)
                {
                    double? best = first[node] is not { } route ? null : AllRoutes.From(graph, [node], hopLimit)
                        .Where(other => other.Path.Length != route.Path.Length || !other.Path.Select(MeshSamples.Id).SequenceEqual(route.Path))
                        .Where(other => !other.Path[1..^1].Select(MeshSamples.Id).Intersect(route.Relays).Any())
                        .Select(other => (double?)other.Etx)
                        .Min();
                    (second[node]?.Etx).Should().Be(best);
                }
            },
            iter: Graphs);

    [Fact]
    public void Second_to_a_direct_link_comes_the_best_way_over_a_router()
    {
        MeshGraph graph = MeshSamples.Graph(
            MeshSamples.Network(hopLimit: 3),
            [Role.Router, Role.Router, Role.EndDevice],
            MeshSamples.Link(0, 1),
            MeshSamples.Link(0, 2, delivery: 0.5),
            MeshSamples.Link(0, 3),
            MeshSamples.Link(1, 3, delivery: 0.4),
            MeshSamples.Link(2, 3));
        DeviceReach reach = Routing.ReachOf(graph)[2];
        reach.Route!.Hops.Should().Be(1);
        reach.SecondRoute!.Path.Should().Equal(MeshSamples.Id(3), MeshSamples.Id(2), MeshSamples.Id(0));
    }

    [Fact]
    public void A_second_way_beyond_the_hop_limit_is_none()
    {
        Link[] ring = [MeshSamples.Link(0, 1), MeshSamples.Link(1, 4), MeshSamples.Link(0, 2), MeshSamples.Link(2, 3), MeshSamples.Link(3, 4)];
        Role[] roles = [Role.Router, Role.Router, Role.Router, Role.EndDevice];
        SecondOf(2).Should().BeNull();
        SecondOf(3)!.Hops.Should().Be(3);

        Route? SecondOf(int hopLimit) => Routing.ReachOf(MeshSamples.Graph(MeshSamples.Network(hopLimit), roles, [.. ring]))[3].SecondRoute;
    }
}
