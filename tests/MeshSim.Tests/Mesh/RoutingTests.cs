using System.Collections.Immutable;
using CsCheck;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Radio;
using QuikGraph;
using QuikGraph.Algorithms;

namespace MeshSim.Tests.Mesh;

public sealed class RoutingTests
{
    /// <summary>Sums of a dozen numbers in another order differ by some roundings.</summary>
    private const double OrderOfSum = 1e-12;

    private static readonly Gen<(int Seed, int Devices, bool IsTied)> Small = Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[2, 8], Gen.Bool);
    private static readonly Gen<(int Seed, int Devices)> Large = Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[2, 40]);

    [Fact]
    public void Without_a_hop_limit_routes_cost_what_the_shortest_path_library_finds() =>
        Large.Sample(sample =>
        {
            MeshGraph graph = MeshSamples.RandomGraph(sample.Seed, sample.Devices, hopLimit: sample.Devices, isTied: false);
            ImmutableArray<Route?> ours = Routing.LeastEtx(graph);
            TryFunc<int, IEnumerable<CostedEdge>> theirs = Outward(graph).ShortestPathsDijkstra(edge => edge.Cost, graph.Coordinator);
            for (int node = 1; node < sample.Devices; node++)
            {
                if (theirs(node, out IEnumerable<CostedEdge> path))
                    ours[node]!.Etx.Should().BeApproximately(path.Sum(edge => edge.Cost), OrderOfSum * sample.Devices);
                else
                    ours[node].Should().BeNull();
            }
        });

    [Fact]
    public void Within_a_hop_limit_routes_are_the_best_of_all_that_exist() =>
        Gen.Select(Small, Gen.Int[1, 7]).Sample((sample, hopLimit) =>
        {
            MeshGraph graph = MeshSamples.RandomGraph(sample.Seed, sample.Devices, hopLimit, sample.IsTied);
            ImmutableArray<Route?> ours = Routing.LeastEtx(graph);
            for (int node = 1; node < sample.Devices; node++)
            {
                var best = AllRoutes.From(graph, [node], hopLimit).OrderBy(route => route.Etx)
                    .ThenBy(route => route.Path.Length).ThenBy(route => route.Key, StringComparer.Ordinal).FirstOrDefault();
                (ours[node]?.Etx).Should().Be(best.Path is null ? null : best.Etx);
                if (best.Path is not null) ours[node]!.Path.Should().Equal(best.Path.Select(MeshSamples.Id));
            }
        });

    [Fact]
    public void A_higher_hop_limit_never_costs_more() =>
        Gen.Select(Large, Gen.Int[1, 6]).Sample((sample, hopLimit) =>
        {
            ImmutableArray<Route?> fewer = Routing.LeastEtx(MeshSamples.RandomGraph(sample.Seed, sample.Devices, hopLimit, isTied: false));
            ImmutableArray<Route?> more = Routing.LeastEtx(MeshSamples.RandomGraph(sample.Seed, sample.Devices, hopLimit + 1, isTied: false));
            return fewer.Zip(more).All(pair => pair.First is null || pair.Second!.Etx <= pair.First.Etx);
        });

    [Fact]
    public void Adding_a_link_never_lengthens_a_route_nor_takes_a_disjoint_one() =>
        Gen.Select(Large, Gen.Int[1, 6]).Where(sample => sample.Item1.Devices > 2).Sample((sample, hopLimit) =>
        {
            MeshGraph whole = MeshSamples.RandomGraph(sample.Seed, sample.Devices, hopLimit, isTied: false);
            if (whole.Links.IsEmpty) return true;
            MeshGraph less = Without(whole, whole.Links[sample.Seed % whole.Links.Length], sample.Seed);
            ImmutableArray<DeviceReach> before = Routing.ReachOf(less), after = Routing.ReachOf(whole);
            return before.Zip(after).All(pair =>
                (pair.First.Route is not { } route || pair.Second.Route!.Etx <= route.Etx) && pair.Second.DisjointRoutes >= pair.First.DisjointRoutes);
        });

    [Fact]
    public void A_route_tells_its_hops_its_weakest_link_and_its_delivery()
    {
        MeshGraph graph = MeshSamples.Graph(
            MeshSamples.Network(hopLimit: 5),
            [Role.Router, Role.EndDevice],
            MeshSamples.Link(0, 1, delivery: 0.5, reverse: 0.8, marginDb: 12),
            MeshSamples.Link(1, 2, delivery: 0.9, reverse: 1, marginDb: 9));

        Route route = Routing.LeastEtx(graph)[2]!;
        route.Path.Should().Equal(MeshSamples.Id(2), MeshSamples.Id(1), MeshSamples.Id(0));
        route.Hops.Should().Be(2);
        route.WeakestMargin.Value.Should().Be(9);
        route.Delivery.Should().BeApproximately(1 * 0.8, OrderOfSum, "the device sends towards the coordinator");
        route.Etx.Should().BeApproximately((1 / 0.4) + (1 / 0.9), OrderOfSum);
    }

    [Fact]
    public void End_devices_relay_nothing()
    {
        MeshGraph graph = MeshSamples.Graph(
            MeshSamples.Network(hopLimit: 5), [Role.EndDevice, Role.Router], MeshSamples.Link(0, 1), MeshSamples.Link(1, 2));
        Routing.ReachOf(graph).Select(reach => reach.IsReached).Should().Equal(true, false);
    }

    [Fact]
    public void In_a_star_only_the_coordinator_is_spoken_to()
    {
        MeshGraph graph = MeshSamples.Graph(
            MeshSamples.Network(hopLimit: 1, Topology.Star), [Role.Router, Role.EndDevice], MeshSamples.Link(0, 1), MeshSamples.Link(1, 2));
        ImmutableArray<DeviceReach> reach = Routing.ReachOf(graph);
        reach.Select(one => one.IsReached).Should().Equal(true, false);
        reach.Select(one => one.DisjointRoutes).Should().Equal(1, 0);
        reach[1].NearestLink.Should().BeNull("it hears nobody who relays");
    }

    [Fact]
    public void A_link_counts_from_the_design_margin_on()
    {
        MeshGraph graph = MeshSamples.Graph(
            MeshSamples.Network(hopLimit: 5),
            [Role.Router, Role.Router],
            MeshSamples.Link(0, 1, marginDb: MeshSamples.DesignMargin.Value),
            MeshSamples.Link(0, 2, marginDb: MeshSamples.DesignMargin.Value - 0.001));
        Routing.ReachOf(graph).Select(reach => reach.IsReached).Should().Equal(true, false);
    }

    [Fact]
    public void An_unreachable_device_names_the_link_that_comes_nearest()
    {
        MeshGraph graph = MeshSamples.Graph(
            MeshSamples.Network(hopLimit: 5),
            [Role.Router, Role.EndDevice, Role.Router, Role.Router],
            MeshSamples.Link(0, 1),
            MeshSamples.Link(0, 2),
            MeshSamples.Link(0, 4, marginDb: 1),
            MeshSamples.Link(1, 4, marginDb: 2),
            MeshSamples.Link(2, 4, marginDb: 30),
            MeshSamples.Link(3, 4, marginDb: 3));
        DeviceReach lost = Routing.ReachOf(graph)[3];
        lost.NearestLink!.Other(lost.Device).Should().Be(MeshSamples.Id(1), "d02 does not relay and d03 is lost itself");
    }

    [Fact]
    public void Nobody_is_reached_when_the_coordinator_has_no_power()
    {
        Network network = MeshSamples.Network(hopLimit: 5);
        var graph = new MeshGraph(network, [MeshSamples.Device(1, Role.Router), MeshSamples.Device(2, Role.Router)], [MeshSamples.Link(1, 2)], MeshSamples.DesignMargin);
        ImmutableArray<DeviceReach> reach = Routing.ReachOf(graph);
        reach.Should().HaveCount(2).And.OnlyContain(one => !one.IsReached && one.DisjointRoutes == 0 && one.NearestLink == null);
    }

    private static MeshGraph Without(MeshGraph graph, Link removed, int seed)
    {
        MeshGraph same = MeshSamples.RandomGraph(seed, graph.Devices.Length, graph.HopLimit, isTied: false);
        IEnumerable<Role> roles = Enumerable.Range(1, graph.Devices.Length - 1).Select(node => same.Relays(node) ? Role.Router : Role.EndDevice);
        return MeshSamples.Graph(MeshSamples.Network(graph.HopLimit), roles, graph.Links.Remove(removed));
    }

    private static AdjacencyGraph<int, CostedEdge> Outward(MeshGraph graph)
    {
        var outward = new AdjacencyGraph<int, CostedEdge>();
        outward.AddVertexRange(Enumerable.Range(0, graph.Devices.Length));
        for (int node = 0; node < graph.Devices.Length; node++)
            foreach ((int next, Link link) in graph.UsableLinks(node))
                if (graph.Relays(node)) outward.AddEdge(new CostedEdge(node, next, link.Etx));
        return outward;
    }

    private sealed record CostedEdge(int Source, int Target, double Cost) : IEdge<int>;
}
