using MeshSim.Devices;
using MeshSim.Mesh.Outages;

namespace MeshSim.Tests.Mesh.Outages;

public sealed class OutageListTests
{
    [Fact]
    public void Every_state_switch_circuit_router_and_the_hub_is_listed_once() =>
        OutageList.Of(StreetHome.Home, StreetHome.Network, null).Select(outage => (outage.Kind, outage.Name)).Should().Equal(
            (OutageKind.State, "evening"),
            (OutageKind.State, "holiday"),
            (OutageKind.Switch, "lamp switch"),
            (OutageKind.Switch, "wall switch"),
            (OutageKind.Circuit, "hub"),
            (OutageKind.Circuit, "lights"),
            (OutageKind.Circuit, "sockets"),
            (OutageKind.Router, "bulb"),
            (OutageKind.Router, "lamp-1"),
            (OutageKind.Router, "lamp-2"),
            (OutageKind.Router, "plug"),
            (OutageKind.Hub, "hub"));

    [Fact]
    public void During_a_state_the_rest_is_off_besides_and_what_is_off_already_is_not_listed()
    {
        State holiday = StreetHome.Home.States[1];
        Outage[] outages = [.. OutageList.Of(StreetHome.Home, StreetHome.Network, holiday)];
        outages.Select(outage => outage.Name).Should().Equal("holiday", "lamp switch", "hub", "lights", "lamp-1", "lamp-2", "hub");
        outages.Should().OnlyContain(outage => outage.State.CircuitsOff.Contains("sockets"));
    }

    [Fact]
    public void In_a_star_no_router_is_rehearsed()
    {
        OutageList.Of(StreetHome.Home, StreetHome.Star, null).Select(outage => outage.Kind).Should().Equal(OutageKind.State, OutageKind.State, OutageKind.Hub);
        OutageList.Pairs(StreetHome.Home, StreetHome.Star, null).Should().BeEmpty();
    }

    [Fact]
    public void Pairs_are_all_pairs_of_routers() =>
        OutageList.Pairs(StreetHome.Home, StreetHome.Network, null).Select(outage => outage.Name).Should().Equal(
            "bulb + lamp-1", "bulb + lamp-2", "bulb + plug", "lamp-1 + lamp-2", "lamp-1 + plug", "lamp-2 + plug");

    [Fact]
    public void Only_a_state_can_be_wanted_to_hold()
    {
        State evening = StreetHome.Home.States[0];
        OutageList.Of(StreetHome.Home, StreetHome.Network, evening).Where(outage => outage.MustHold).Select(outage => outage.Name).Should().Equal("evening");
    }
}
