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
    public void After_a_change_the_links_are_those_of_the_changed_home_and_what_stayed_is_not_computed_again()
    {
        Network plugs = Terrace.Networks[0];
        StateGraphs before = new(Terrace, plugs, ModelName.Detour);
        Device moved = Terrace.DevicesOf(plugs).ElementAt(3);
        Home devices = Terrace with { Devices = [.. Terrace.Devices.Where(device => device.Id != moved.Id), moved with { HeightMetres = moved.HeightMetres + 0.5 }] };
        foreach (State? state in Terrace.States.Prepend(null!))
        {
            ImmutableArray<Link> links = before.After(devices, plugs).WithAllPower(state).Links;
            links.Select(Figures).Should().Equal(new StateGraphs(devices, plugs, ModelName.Detour).WithAllPower(state).Links.Select(Figures));
            links.Where(link => link.From != moved.Id && link.To != moved.Id).Should().OnlyContain(link => before.WithAllPower(state).Links.Any(same => ReferenceEquals(same, link)));
        }
    }

    [Fact]
    public void After_a_change_of_more_than_devices_every_link_is_computed_again()
    {
        Network plugs = Terrace.Networks[0], elsewhere = plugs with { Channel = plugs.Channel + 1 };
        StateGraphs before = new(Terrace, plugs, ModelName.Detour);
        Home silent = Terrace with { AccessPoints = [] };
        foreach ((Home home, Network network) in new[] { (silent, plugs), (Terrace with { Networks = Terrace.Networks.SetItem(0, elsewhere) }, elsewhere) })
        {
            ImmutableArray<Link> links = before.After(home, network).In(null).Links;
            links.Select(Figures).Should().Equal(new StateGraphs(home, network, ModelName.Detour).In(null).Links.Select(Figures));
            links.Should().NotContain(link => before.In(null).Links.Contains(link));
        }
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

    private static (DeviceId, DeviceId, Link) Figures(Link link) =>
        (link.From, link.To, link with { PathLoss = link.PathLoss with { Items = [] }, AtFrom = null, AtTo = null });
}
