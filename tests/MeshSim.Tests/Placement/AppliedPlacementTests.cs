using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Files;
using MeshSim.Mesh.Outages;
using MeshSim.Placement;
using MeshSim.Studies;
using MeshSim.Tests.Architecture;
using MeshSim.Tests.Mesh;

namespace MeshSim.Tests.Placement;

/// <summary>Repeaters plugged in as recommended, and everything rehearsed again: rehearsal knows nothing of the solver.</summary>
public sealed class AppliedPlacementTests
{
    private const int Homes = 200;

    private static readonly Home Terrace = HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", "quay-terrace")).Home!;
    private static readonly PlacementGoals Everything = PlacementGoals.Default;

    [Fact]
    public void On_quay_terrace_bedtime_holds_once_the_repeaters_are_in()
    {
        Rehearse(Terrace, null).Broken.Select(broken => broken.Outage.Name).Should().Equal("bedtime");

        RepeaterPlacement placement = Place(Terrace, new() { Ways = 1 });

        placement.StatesHeld.Should().Equal("bedtime");
        placement.ServesAll.Should().BeTrue();
        placement.IsProven.Should().BeTrue();
        NetworkRehearsal after = Rehearse(Terrace, placement);
        after.Broken.Should().BeEmpty();
        after.Coverage.Devices.Should().OnlyContain(reach => reach.IsReached);
    }

    [Fact]
    public void On_quay_terrace_with_two_ways_no_router_drops_a_device_but_those_named()
    {
        RepeaterPlacement placement = Place(Terrace, Everything);

        placement.IsProven.Should().BeTrue();
        NetworkRehearsal before = Rehearse(Terrace, null), after = Rehearse(Terrace, placement);
        DroppedByRouters(before).Should().Contain(("landing-bulb", "roof-window-contact"));
        after.Broken.Should().BeEmpty();

        // One outlet alone reaches what lies deep in the workshop and one the loft: what hangs on them is said to do so, with what it lacks.
        placement.Unserved.Should().OnlyContain(unserved => unserved.Case.State == null && unserved.Shortfall!.Value.Value > 0);
        DroppedByRouters(after).Should().BeEquivalentTo(NamedLosses(placement));
        placement.Unserved.Select(unserved => unserved.Device.Value).Should()
            .BeEquivalentTo("workshop-plug", "loft-climate", "shower-leak");
    }

    [Fact]
    public void A_second_repeater_beside_the_first_is_a_second_way_for_whoever_hangs_on_it()
    {
        Outlet[] hungOn = [.. Terrace.Outlets.Where(outlet => NamedLosses(Place(Terrace, Everything)).Any(loss => loss.Router.EndsWith(outlet.Id.Value, StringComparison.Ordinal)))];
        hungOn.Should().HaveCount(2);
        Home twins = Terrace with { Outlets = [.. Terrace.Outlets, .. hungOn.Select(outlet => outlet with { Id = new($"{outlet.Id}-twin") })] };

        RepeaterPlacement placement = Place(twins, Everything);

        placement.ServesAll.Should().BeTrue();
        DroppedByRouters(Rehearse(twins, placement)).Should().BeEmpty();
    }

    [Fact]
    public void In_random_homes_states_and_losses_drop_exactly_what_was_named()
    {
        int withKept = 0, withStates = 0, withLosses = 0, clean = 0;
        for (int seed = 0; seed < Homes; seed++)
        {
            Home home = HeldHomes.Of(seed);
            RepeaterPlacement placement = Place(home, Everything);
            NetworkRehearsal after = Rehearse(home, placement);
            HashSet<DeviceId> known = [.. home.Devices.Select(device => device.Id)];
            withKept += placement.KeptOn.IsEmpty ? 0 : 1;

            DroppedByRouters(after).Where(pair => known.Contains(new(pair.Device))).Should().BeEquivalentTo(NamedLosses(placement), "seed {0}", seed);
            DroppedIn(after).Where(pair => known.Contains(new(pair.Device))).Should().BeEquivalentTo(NamedStates(placement), "seed {0}", seed);
            withStates += placement.Unserved.Any(unserved => unserved.Case.State is not null) ? 1 : 0;
            withLosses += placement.Unserved.Any(unserved => unserved.Case.Lost is not null) ? 1 : 0;
            clean += placement.ServesAll && !placement.Repeaters.IsEmpty ? 1 : 0;
        }

        new[] { withStates, withLosses, clean }.Should().OnlyContain(count => count > Homes / 40, "all kinds of answers must occur");
        withKept.Should().BePositive("devices must be kept powered where that is cheaper");
    }

    [Fact]
    public void Each_repeater_serves_somebody_some_time()
    {
        for (int seed = 0; seed < Homes; seed++)
        {
            RepeaterPlacement placement = Place(HeldHomes.Of(seed), Everything);
            placement.Repeaters.Should().NotContain(repeater => repeater.Serves.IsEmpty && repeater.ServesWhen.IsEmpty, "seed {0}", seed);
            placement.Repeaters.SelectMany(repeater => repeater.ServesWhen.SelectMany(when => when.Devices.Intersect(repeater.Serves))).Should().BeEmpty();
        }
    }

    [Fact]
    public void A_state_without_a_coordinator_is_named_for_each_device_that_it_leaves_alone()
    {
        State dark = new() { Name = "dark", DevicesOff = [Terrace.Networks[0].Coordinator, new("hall-motion")], MustHold = true };
        RepeaterPlacement placement = Place(Terrace with { States = [dark] }, new() { Ways = 1 });

        placement.Repeaters.Select(repeater => repeater.Outlet).Should().Equal(Place(Terrace, PlacementGoals.OneWayEveryday).Repeaters.Select(repeater => repeater.Outlet));
        placement.Unserved.Should().HaveCount(Terrace.DevicesOf(Terrace.Networks[0]).Count() - 2)
            .And.OnlyContain(unserved => unserved.Case == new PlacementCase("dark", null) && unserved.BestRelay.EndsWith("has no power"));
    }

    [Fact]
    public void Three_ways_are_more_than_can_be_asked_for()
    {
        Action ask = () => _ = new PlacementGoals { Ways = 3 };
        ask.Should().Throw<ArgumentOutOfRangeException>();
    }

    private static RepeaterPlacement Place(Home home, PlacementGoals goals) =>
        CoverageStudy.Repeaters(CoverageStudy.Run(home, home.Networks[0], new()), new() { Goals = goals });

    private static NetworkRehearsal Rehearse(Home home, RepeaterPlacement? placement)
    {
        Home applied = home with { Devices = [.. home.Devices, .. (placement?.Repeaters ?? []).Select(repeater => Router(home.Networks[0], repeater.Outlet))] };
        foreach (KeptDevice kept in placement?.KeptOn ?? []) applied = new KeepPowered(kept.Device, kept.Switch).On(applied);
        return ResilienceStudy.Rehearse(applied, applied.Networks[0], new(), new() { Draws = 0 });
    }

    private static Device Router(Network network, Outlet outlet) => MeshSamples.Device(0, Role.Router) with
    {
        Id = new($"the repeater at {outlet.Id}"),
        Network = network.Name,
        Storey = outlet.Storey,
        Point = outlet.Point,
        HeightMetres = outlet.HeightMetres,
        Room = outlet.Room,
        Circuit = outlet.Circuit,
    };

    private static IEnumerable<(string Router, string Device)> DroppedByRouters(NetworkRehearsal rehearsal) =>
        from outage in rehearsal.Rehearsals
        where outage.Outage.Kind == OutageKind.Router
        from device in outage.Dropped
        select (outage.Outage.Name, device.Value);

    private static IEnumerable<(string State, string Device)> DroppedIn(NetworkRehearsal rehearsal) =>
        from outage in rehearsal.Broken
        from device in outage.Dropped
        select (outage.Outage.Name, device.Value);

    private static IEnumerable<(string Router, string Device)> NamedLosses(RepeaterPlacement placement) =>
        placement.Unserved.Where(unserved => unserved.Case.Lost is not null).Select(unserved => (unserved.Case.Lost!, unserved.Device.Value));

    /// <summary>Who is out of reach everyday does not drop.</summary>
    private static IEnumerable<(string State, string Device)> NamedStates(RepeaterPlacement placement) =>
        placement.Unserved.Where(unserved => unserved.Case.State is not null)
            .Where(unserved => !placement.Unserved.Any(other => other.Device == unserved.Device && other.Case == default))
            .Select(unserved => (unserved.Case.State!, unserved.Device.Value));
}
