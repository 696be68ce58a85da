using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh.Outages;

namespace MeshSim.Tests.Mesh.Outages;

public sealed class RehearsingTests
{
    [Fact]
    public void A_device_that_loses_its_only_router_drops_and_one_without_power_does_not()
    {
        Rehearsal evening = Of("evening"), holiday = Of("holiday");
        evening.Off.Should().Equal(StreetHome.Ids("bulb"));
        evening.Dropped.Should().Equal(StreetHome.Ids("east-sensor"));
        holiday.Off.Should().Equal(StreetHome.Ids("bulb", "east-sensor", "plug", "heater"));
        holiday.Dropped.Should().Equal(StreetHome.Ids("contact"), "the sensor is off itself, and the contact has lost both its ways");
    }

    [Fact]
    public void A_device_with_one_way_fewer_is_named_and_keeps_its_route()
    {
        Rehearsal plug = Of("plug", OutageKind.Router);
        plug.Dropped.Should().BeEmpty();
        plug.LeftWithOneWay.Should().Equal(StreetHome.Ids("contact", "plug").Take(1));
        Rehearsal bulb = Of("bulb", OutageKind.Router);
        bulb.LeftWithOneWay.Should().Contain(new DeviceId("contact"));
        bulb.Changed.Select(change => change.Device).Should().Equal(StreetHome.Ids("contact"), "its way led over the bulb, the lower id");
        bulb.Changed[0].HopsAdded.Should().Be(0);
    }

    [Fact]
    public void The_loss_of_the_hub_drops_everybody_who_was_reached()
    {
        Rehearsal hub = Of("hub", OutageKind.Hub);
        hub.Off.Should().Equal(StreetHome.Ids("hub"));
        hub.Dropped.Should().Equal(StreetHome.Ids("bulb", "east-sensor", "plug", "contact", "lamp-1", "lamp-2", "west-sensor", "heater"));
        hub.Changed.Should().BeEmpty();
    }

    [Fact]
    public void A_pair_drops_what_neither_drops_alone()
    {
        var rehearsing = new Rehearsing(StreetHome.Graphs, null);
        ImmutableArray<Outage> outages = [.. OutageList.Of(StreetHome.Home, StreetHome.Network, null), .. OutageList.Pairs(StreetHome.Home, StreetHome.Network, null)];
        ImmutableArray<Rehearsal> rehearsals = [.. outages.Select(rehearsing.Of)];
        rehearsals.Where(rehearsal => rehearsal.Outage.Kind == OutageKind.Pair && OutageSummary.Drops(rehearsal, rehearsals))
            .Select(rehearsal => rehearsal.Outage.Name).Should().Equal("bulb + plug", "lamp-1 + lamp-2");
    }

    [Fact]
    public void Summaries_count_per_kind_and_put_the_worst_first()
    {
        var rehearsing = new Rehearsing(StreetHome.Graphs, null);
        ImmutableArray<OutageSummary> summaries = OutageSummary.Of([.. OutageList.Of(StreetHome.Home, StreetHome.Network, null).Select(rehearsing.Of)]);
        summaries.Select(summary => (summary.Kind, summary.Rehearsed, summary.Dropping, summary.Worst.Outage.Name)).Should().Equal(
            (OutageKind.Circuit, 3, 2, "hub"),
            (OutageKind.Hub, 1, 1, "hub"),
            (OutageKind.State, 2, 2, "evening"),
            (OutageKind.Switch, 2, 2, "wall switch"),
            (OutageKind.Router, 4, 1, "bulb"));
        OutageSummary.Of([]).Should().BeEmpty();
    }

    [Fact]
    public void During_a_state_outages_are_compared_with_that_state()
    {
        State evening = StreetHome.Home.States[0];
        var rehearsing = new Rehearsing(StreetHome.Graphs, evening);
        Rehearsal plug = rehearsing.Of(OutageList.Of(StreetHome.Home, StreetHome.Network, evening).Single(outage => outage.Name == "plug"));
        plug.Off.Should().Equal(StreetHome.Ids("plug"));
        plug.Dropped.Should().Equal(StreetHome.Ids("contact"), "the bulb is off in the evening, and who was lost then is not lost anew");
    }

    private static Rehearsal Of(string name, OutageKind kind = OutageKind.State) =>
        new Rehearsing(StreetHome.Graphs, null).Of(OutageList.Of(StreetHome.Home, StreetHome.Network, null).Single(outage => outage.Name == name && outage.Kind == kind));
}
