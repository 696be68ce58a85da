using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.FloorPlans;
using MeshSim.Mesh.Outages;
using MeshSim.Studies;
using MeshSim.Studies.Changes;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Studies;

public sealed class CompareStudyTests
{
    private static readonly Home Terrace = HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", "quay-terrace")).Home!;
    private static readonly NetworkName Plugs = Terrace.Networks[0].Name;
    private static readonly StudyOptions Coarse = new() { GridStepMetres = 1 };

    [Fact]
    public void A_home_compared_with_itself_is_the_same_and_nothing_is_worse()
    {
        CompareStudy.Changes(Terrace, Terrace).Any.Should().BeFalse();
        NetworkChanges changes = CompareStudy.Network(Terrace, Terrace, Plugs, Coarse);

        changes.Devices.Should().OnlyContain(device => device.Way == WayChange.Unchanged || (device.Before!.Route == null && device.After!.Route == null));
        changes.Outages.Should().BeEmpty();
        changes.Rooms.Should().NotBeEmpty().And.OnlyContain(room => room.Before == room.After);
        changes.Maps.Should().HaveCount(3).And.OnlyContain(map => map.Before.Values.SequenceEqual(map.After.Values));
        changes.IsWorse.Should().BeFalse();
    }

    [Fact]
    public void A_router_taken_away_and_put_back_turns_every_difference_round()
    {
        Home without = Terrace with { Devices = [.. Terrace.Devices.Where(device => device.Id.Value != "landing-bulb")] };
        NetworkChanges there = CompareStudy.Network(Terrace, without, Plugs, Coarse), back = CompareStudy.Network(without, Terrace, Plugs, Coarse);

        there.Devices.Single(device => device.Device.Value == "landing-bulb").Way.Should().Be(WayChange.Gone);
        back.Devices.Single(device => device.Device.Value == "landing-bulb").Way.Should().Be(WayChange.Added);
        Of(there, WayChange.Lost).Should().Equal(Of(back, WayChange.Won)).And.NotBeEmpty();
        Of(there, WayChange.LeftWithOneWay).Should().Equal(Of(back, WayChange.GainedSecondWay));
        there.IsWorse.Should().BeTrue();
        foreach ((MarginChange map, MarginChange turned) in there.Maps.Zip(back.Maps))
            (map.Before.Values.SequenceEqual(turned.After.Values), map.After.Values.SequenceEqual(turned.Before.Values)).Should().Be((true, true));
    }

    [Fact]
    public void What_drops_in_a_state_is_what_the_routes_of_that_state_say()
    {
        // The bulb that carries the loft no longer hangs behind a switch: bedtime drops nobody it did not have to.
        Home bypassed = Changed("landing-bulb", device => device with { SwitchedBy = null });
        State bedtime = Terrace.States[0];
        ImmutableArray<DeviceId> before = Unreached(Terrace, bedtime), after = Unreached(bypassed, bedtime);

        NetworkChanges changes = CompareStudy.Network(Terrace, bypassed, Plugs, Coarse);

        OutageChange change = changes.Outages.Single(outage => outage.Name == "bedtime");
        (change.Kind, change.MustHold, change.IsWorse).Should().Be((OutageKind.State, true, false));
        change.DropsNoLonger.Should().BeEquivalentTo(before.Except(after)).And.NotBeEmpty();
        changes.IsWorse.Should().BeFalse();
        CompareStudy.Network(bypassed, Terrace, Plugs, Coarse).Outages.Single(outage => outage.Name == "bedtime").DropsNow
            .Should().Equal(change.DropsNoLonger);
    }

    [Fact]
    public void Rooms_that_lose_a_twentieth_of_their_covered_floor_are_worse()
    {
        Home without = Terrace with { Devices = [.. Terrace.Devices.Where(device => device.Id.Value != "workshop-plug")] };
        foreach (RoomChange room in CompareStudy.Network(Terrace, without, Plugs, Coarse).Rooms)
        {
            room.After.Covered.Should().BeLessThanOrEqualTo(room.Before.Covered, "a router less covers no more of {0}", room.Room);
            room.IsWorse.Should().Be(room.Before.Covered - room.After.Covered >= RoomChange.NoticedShare);
            room.IsBetter.Should().BeFalse();
        }
    }

    [Fact]
    public void The_map_of_a_side_is_the_map_of_that_home()
    {
        Home moved = Changed("dining-plug", device => device with { HeightMetres = 2 });
        StoreyName ground = Terrace.FloorPlan.Storeys[0].Name;
        MarginChange map = CompareStudy.Network(Terrace, moved, Plugs, Coarse).Maps[0];

        map.Before.Values.Should().Equal(MapOf(Terrace));
        map.After.Values.Should().Equal(MapOf(moved));

        float[] MapOf(Home home) => CoverageStudy.Map(CoverageStudy.Run(home, home.Networks[0], Coarse), ground, Coarse).Margin.Values;
    }

    [Fact]
    public void Storeys_that_cannot_be_laid_over_each_other_have_no_map_and_are_named()
    {
        FloorPlan plan = Terrace.FloorPlan;
        Home lower = Terrace with { FloorPlan = new([plan.Storeys[0], plan.Storeys[1] with { ElevationMetres = plan.Storeys[1].ElevationMetres + 0.5 }, plan.Storeys[2]]) };

        CompareStudy.Network(Terrace, lower, Plugs, Coarse).Maps.Select(map => map.Storey).Should().Equal(plan.Storeys[0].Name, plan.Storeys[2].Name);
        PlanChange change = CompareStudy.Changes(Terrace, lower).Plan.Should().ContainSingle().Which;
        (change.Subject, change.HidesTheMap).Should().Be((plan.Storeys[1].Name.Value, true));
    }

    [Fact]
    public void A_network_of_one_home_alone_is_refused() =>
        FluentActions.Invoking(() => CompareStudy.Network(Terrace, Terrace with { Networks = [] }, Plugs, Coarse)).Should().Throw<ArgumentException>().WithMessage("*no network*");

    private static Home Changed(string id, Func<Device, Device> change) =>
        Terrace with { Devices = [.. Terrace.Devices.Select(device => device.Id.Value == id ? change(device) : device)] };

    private static IEnumerable<DeviceId> Of(NetworkChanges changes, WayChange way) => changes.Devices.Where(device => device.Way == way).Select(device => device.Device);

    private static ImmutableArray<DeviceId> Unreached(Home home, State state) =>
        [.. CoverageStudy.Run(home, home.Networks[0], new() { State = state }).Devices.Where(reach => !reach.IsReached).Select(reach => reach.Device)];
}
