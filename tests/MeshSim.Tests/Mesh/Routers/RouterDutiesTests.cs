using System.Collections.Immutable;
using MeshSim.Mesh.Routers;

namespace MeshSim.Tests.Mesh.Routers;

public sealed class RouterDutiesTests
{
    private static readonly ImmutableArray<RouterDuty> Duties = RouterDuties.Of(StreetHome.Home, StreetHome.Network, StreetHome.Graphs, null);

    [Fact]
    public void Every_mains_device_is_judged_in_the_order_of_the_home() =>
        Duties.Select(duty => (duty.Device.Value, duty.Verdict)).Should().Equal(
            ("bulb", RouterVerdict.Replace),
            ("plug", RouterVerdict.Replace),
            ("lamp-1", RouterVerdict.Replace),
            ("lamp-2", RouterVerdict.Replace),
            ("heater", RouterVerdict.Harmless));

    [Fact]
    public void A_router_that_others_need_and_a_switch_can_take_is_to_be_replaced()
    {
        RouterDuty bulb = Of("bulb");
        bulb.Carries.Should().Equal(StreetHome.Ids("east-sensor", "contact"));
        bulb.NeededBy.Should().Equal(StreetHome.Ids("east-sensor"));
        bulb.TakenBy.Select(outage => outage.Name).Should().Equal("evening", "holiday", "wall switch", "lights");
        bulb.MissedIn.Select(outage => outage.Name).Should().Equal("evening", "holiday", "wall switch");
    }

    [Fact]
    public void Two_that_stand_in_for_each_other_behind_one_switch_are_both_missed_there()
    {
        RouterDuty lamp = Of("lamp-1");
        lamp.NeededBy.Should().BeEmpty();
        lamp.MissedIn.Select(outage => outage.Name).Should().Equal("lamp switch");
        lamp.LeavesOneWay.Should().Equal(StreetHome.Ids("lamp-2", "west-sensor"));
    }

    [Fact]
    public void A_router_that_others_need_and_only_a_circuit_can_take_is_to_be_kept()
    {
        var home = StreetHome.Home with { Devices = [.. StreetHome.Home.Devices.Select(device => device with { SwitchedBy = null })], States = [] };
        RouterDuties.Of(home, StreetHome.Network, new(home, StreetHome.Network, default), null).Single(duty => duty.Device.Value == "bulb").Verdict.Should().Be(RouterVerdict.Keep);
    }

    [Fact]
    public void A_mains_device_that_is_set_up_as_an_end_device_carries_nobody()
    {
        RouterDuty heater = Of("heater");
        heater.Relays.Should().BeFalse();
        heater.IsReached.Should().BeTrue();
        heater.Carries.Should().BeEmpty();
    }

    [Fact]
    public void In_a_state_only_what_is_on_is_judged() =>
        RouterDuties.Of(StreetHome.Home, StreetHome.Network, StreetHome.Graphs, StreetHome.Home.States[1]).Select(duty => duty.Device)
            .Should().Equal(StreetHome.Ids("lamp-1", "lamp-2"));

    [Fact]
    public void In_a_star_nobody_relays() =>
        RouterDuties.Of(StreetHome.Home, StreetHome.Star, new(StreetHome.Home, StreetHome.Star, default), null)
            .Should().OnlyContain(duty => !duty.Relays && duty.Carries.IsEmpty && duty.Verdict == RouterVerdict.Harmless);

    private static RouterDuty Of(string id) => Duties.Single(duty => duty.Device.Value == id);
}
