using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh.Routers;

namespace MeshSim.Tests.Mesh.Routers;

public sealed class NewRoutersTests
{
    [Fact]
    public void Mains_devices_of_other_networks_and_mains_end_devices_are_asked()
    {
        NewRouters.Candidates(StreetHome.Home, StreetHome.Network, null).Select(device => device.Id).Should().Equal(StreetHome.Ids("heater", "shed-module", "lost-module"));
        NewRouters.Candidates(StreetHome.Home, StreetHome.Network, StreetHome.Home.States[1]).Select(device => device.Id)
            .Should().Equal(StreetHome.Ids("shed-module", "lost-module"), "the heater is off then");
        NewRouters.Candidates(StreetHome.Home, StreetHome.Star, null).Should().BeEmpty("in a star nobody routes");
    }

    [Fact]
    public void The_one_that_newly_reaches_a_device_comes_before_the_one_that_gives_a_second_way()
    {
        ImmutableArray<NewRouter> found = Find(null);
        found.Select(router => router.Device).Should().Equal(StreetHome.Ids("shed-module", "heater"));
        found[0].Reached.Should().Equal(StreetHome.Ids("far-sensor"));
        found[0].Network.Should().Be(new NetworkName("star"));
        found[1].Reached.Should().BeEmpty();
        found[1].SecondWay.Should().Equal(StreetHome.Ids("bulb", "east-sensor"));
    }

    [Fact]
    public void In_a_state_that_costs_a_device_the_same_place_brings_it_back() =>
        Find(StreetHome.Home.States[0]).Single(router => router.Device.Value == "heater").Reached.Should().Equal(StreetHome.Ids("east-sensor"));

    private static ImmutableArray<NewRouter> Find(State? state) => NewRouters.Of(
        StreetHome.Home, StreetHome.Network, StreetHome.Graphs.In(state), StreetHome.Graphs.ModelIn(state), NewRouters.Candidates(StreetHome.Home, StreetHome.Network, state));
}
