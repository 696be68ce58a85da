using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Studies;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Mesh;

public sealed class StateGraphsTests
{
    private static readonly Home Terrace = HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", "quay-terrace")).Home!;

    [Fact]
    public void The_graph_of_a_state_has_the_links_that_the_state_itself_would_compute()
    {
        foreach (Network network in Terrace.Networks)
        {
            var graphs = new StateGraphs(Terrace, network, ModelName.Detour);
            foreach (State? state in Terrace.States.Prepend(null!))
            {
                MeshGraph graph = graphs.In(state);
                ImmutableArray<Link> links = LinkTable.Compute(Terrace, network, graphs.ModelIn(state), state);
                graph.Links.Select(link => (link.From, link.To, link.Margin)).Should().Equal(links.Select(link => (link.From, link.To, link.Margin)));
                NetworkCoverage coverage = CoverageStudy.Run(Terrace, network, new() { State = state });
                Routing.ReachOf(graph).Select(reach => (reach.Device, reach.Route?.Etx)).Should().Equal(coverage.Devices.Select(reach => (reach.Device, reach.Route?.Etx)));
            }
        }
    }

    [Fact]
    public void Open_doors_change_links_and_power_does_not()
    {
        var graphs = new StateGraphs(Terrace, Terrace.Networks[0], ModelName.Detour);
        State open = Terrace.States.Single(state => !state.Open.IsEmpty);
        graphs.In(open).Links.Should().Contain(link => link.Margin > graphs.In(null).Links.Single(same => same.From == link.From && same.To == link.To).Margin);
        graphs.In(Terrace.States[0] with { Open = [] }).Links.Should().BeSubsetOf(graphs.In(null).Links);
    }

    [Fact]
    public void A_device_can_be_kept_on()
    {
        State evening = StreetHome.Home.States[0];
        StreetHome.Graphs.In(evening).Devices.Should().NotContain(new DeviceId("bulb"));
        StreetHome.Graphs.In(evening, [new("bulb")]).Devices.Should().Equal(StreetHome.Graphs.In(null).Devices);
    }

    [Fact]
    public void A_state_that_opens_an_unknown_door_is_refused() =>
        FluentActions.Invoking(() => StreetHome.Graphs.In(new() { Name = "x", Open = ["no such door"] })).Should().Throw<ArgumentException>().WithMessage("*no such door*");
}
