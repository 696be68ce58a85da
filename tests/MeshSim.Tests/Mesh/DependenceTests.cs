using System.Collections.Immutable;
using CsCheck;
using MeshSim.Devices;
using MeshSim.Mesh;
using QuikGraph;
using QuikGraph.Algorithms;

namespace MeshSim.Tests.Mesh;

public sealed class DependenceTests
{
    private const int Graphs = 1000;

    private static readonly Gen<(int Seed, int Devices)> Large = Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[2, 20]);

    [Fact]
    public void Without_a_hop_limit_a_device_needs_its_dominators() =>
        Large.Sample(
            sample =>
            {
                MeshGraph graph = MeshSamples.RandomGraph(sample.Seed, sample.Devices, hopLimit: sample.Devices, isTied: false);
                HashSet<int>?[] dominators = Dominators(graph);
                ImmutableArray<ImmutableArray<DeviceId>> needs = Dependence.Needs(graph);
                for (int node = 1; node < sample.Devices; node++)
                    needs[node].Should().BeEquivalentTo((dominators[node] ?? []).Where(d => d != node && d != graph.Coordinator).Select(d => graph.Devices[d]));
            },
            iter: Graphs);

    [Fact]
    public void Within_a_hop_limit_a_device_needs_the_routers_that_all_its_routes_share() =>
        Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[2, 8], Gen.Int[1, 5]).Sample(
            (seed, devices, hopLimit) =>
            {
                MeshGraph graph = MeshSamples.RandomGraph(seed, devices, hopLimit, isTied: false);
                ImmutableArray<ImmutableArray<DeviceId>> needs = Dependence.Needs(graph);
                for (int node = 1; node < devices; node++)
                {
                    int[][] routes = [.. AllRoutes.From(graph, [node], hopLimit).Select(route => route.Path[1..^1])];
                    IEnumerable<int> shared = routes.Length == 0 ? [] : routes.Aggregate((a, b) => [.. a.Intersect(b)]);
                    needs[node].Should().BeEquivalentTo(shared.Select(relay => graph.Devices[relay]));
                }
            },
            iter: Graphs);

    [Fact]
    public void Among_routers_alone_those_that_somebody_needs_are_the_articulation_points() =>
        Large.Sample(
            sample =>
            {
                MeshGraph random = MeshSamples.RandomGraph(sample.Seed, sample.Devices, hopLimit: sample.Devices, isTied: false);
                MeshGraph graph = MeshSamples.Graph(
                    MeshSamples.Network(sample.Devices), Enumerable.Repeat(Role.Router, sample.Devices - 1), random.Links);
                HashSet<int> ofCoordinator = [.. ComponentOfCoordinator(graph, without: -1)];
                IEnumerable<DeviceId> articulation = ofCoordinator
                    .Where(node => node != 0 && ComponentOfCoordinator(graph, without: node).Count() < ofCoordinator.Count - 1)
                    .Select(node => graph.Devices[node]);
                Dependence.NeededBy(graph).Keys.Should().BeEquivalentTo(articulation);
            },
            iter: Graphs);

    [Fact]
    public void A_hop_limit_makes_a_router_needed_whose_replacement_is_too_long_a_way_round()
    {
        Link[] ring = [MeshSamples.Link(0, 1), MeshSamples.Link(1, 4), MeshSamples.Link(0, 2), MeshSamples.Link(2, 3), MeshSamples.Link(3, 4)];
        Role[] roles = [Role.Router, Role.Router, Role.Router, Role.EndDevice];
        Dependence.Needs(MeshSamples.Graph(MeshSamples.Network(hopLimit: 2), roles, [.. ring]))[4].Should().Equal(MeshSamples.Id(1));
        Dependence.Needs(MeshSamples.Graph(MeshSamples.Network(hopLimit: 3), roles, [.. ring]))[4].Should().BeEmpty();
    }

    [Fact]
    public void Needed_routers_come_from_the_coordinator_outwards()
    {
        MeshGraph chain = MeshSamples.Graph(
            MeshSamples.Network(hopLimit: 5), [Role.EndDevice, Role.Router, Role.Router], MeshSamples.Link(0, 3), MeshSamples.Link(2, 3), MeshSamples.Link(1, 2));
        Dependence.Needs(chain)[1].Should().Equal(MeshSamples.Id(3), MeshSamples.Id(2));
        Dependence.NeededBy(chain)[MeshSamples.Id(3)].Should().Equal(MeshSamples.Id(1), MeshSamples.Id(2));
    }

    [Fact]
    public void Nobody_needs_anybody_when_the_coordinator_has_no_power()
    {
        var graph = new MeshGraph(
            MeshSamples.Network(hopLimit: 5), [MeshSamples.Device(1, Role.Router), MeshSamples.Device(2, Role.Router)], [MeshSamples.Link(1, 2)], MeshSamples.DesignMargin);
        Dependence.Needs(graph).Should().OnlyContain(needs => needs.IsEmpty);
        Dependence.NeededBy(graph).Should().BeEmpty();
    }

    /// <summary>
    /// The classical definition as equations, solved by repetition: a node is dominated by itself and by what dominates all nodes
    /// from which it is entered. Null for nodes out of reach.
    /// </summary>
    private static HashSet<int>?[] Dominators(MeshGraph graph)
    {
        var sets = new HashSet<int>?[graph.Devices.Length];
        sets[graph.Coordinator] = [graph.Coordinator];
        for (bool changed = true; changed;)
        {
            changed = false;
            for (int node = 1; node < sets.Length; node++)
            {
                HashSet<int>[] entered = [.. graph.UsableLinks(node).Where(entry => graph.Relays(entry.Neighbour)).Select(entry => sets[entry.Neighbour]).OfType<HashSet<int>>()];
                if (entered.Length == 0) continue;
                HashSet<int> common = [.. entered.Aggregate((a, b) => [.. a.Intersect(b)]), node];
                if (sets[node]?.SetEquals(common) == true) continue;
                sets[node] = common;
                changed = true;
            }
        }

        return sets;
    }

    private static IEnumerable<int> ComponentOfCoordinator(MeshGraph graph, int without)
    {
        var undirected = new UndirectedGraph<int, Edge<int>>();
        undirected.AddVertexRange(Enumerable.Range(0, graph.Devices.Length).Where(node => node != without));
        for (int node = 0; node < graph.Devices.Length; node++)
            foreach ((int next, Link _) in graph.UsableLinks(node))
                if (node < next && node != without && next != without) undirected.AddEdge(new Edge<int>(node, next));
        var components = new Dictionary<int, int>();
        undirected.ConnectedComponents(components);
        return components.Where(entry => entry.Value == components[graph.Coordinator]).Select(entry => entry.Key);
    }
}
