using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.Placement;
using MeshSim.Studies.Sites;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Studies.Sites;

public sealed class FollowedAdviceTests
{
    private static readonly Home Terrace = HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", "quay-terrace")).Home!;

    [Fact]
    public void A_repeater_becomes_a_mains_router_in_the_open_at_its_outlet()
    {
        Outlet outlet = Terrace.Outlets[3];
        Home applied = FollowedAdvice.With(Terrace, [Placement("plugs", outlet)]);
        Device repeater = applied.Devices[^1];
        applied.Devices[..^1].Should().Equal(Terrace.Devices);
        repeater.Id.Value.Should().Be($"repeater-{outlet.Id}");
        (repeater.Network.Value, repeater.Kind, repeater.Power, repeater.Role).Should().Be(("plugs", "repeater", PowerSource.Mains, Role.Router));
        (repeater.Storey, repeater.Point, repeater.HeightMetres, repeater.Room, repeater.Circuit).Should()
            .Be((outlet.Storey, outlet.Point, outlet.HeightMetres, outlet.Room, outlet.Circuit));
        repeater.Mounting.Name.Should().Be("surface");
    }

    [Fact]
    public void Two_networks_at_one_outlet_get_two_devices_of_different_ids()
    {
        Home applied = FollowedAdvice.With(Terrace, [Placement("plugs", Terrace.Outlets[0]), Placement("lighting", Terrace.Outlets[0])]);
        applied = FollowedAdvice.With(applied, [Placement("lighting", Terrace.Outlets[0])]);
        applied.Devices[^3..].Select(device => device.Id.Value).Should().Equal("repeater-hall-front", "repeater-hall-front-lighting", "repeater-hall-front-lighting-2");
    }

    [Fact]
    public void A_device_kept_powered_loses_its_switch_and_leaves_the_states_that_turn_it_off()
    {
        Device lamp = Terrace.Devices.First(device => device.SwitchedBy is not null && device.Role == Role.Router);
        Home applied = FollowedAdvice.With(Terrace, [Placement("plugs") with { KeptOn = [new(lamp.Id, lamp.SwitchedBy, [], default, default)] }]);
        applied.Devices.First(device => device.Id == lamp.Id).SwitchedBy.Should().BeNull();
        applied.States.Should().NotContain(state => state.DevicesOff.Contains(lamp.Id));
    }

    [Fact]
    public void A_switch_past_which_its_last_device_is_fed_leaves_the_states_so_that_the_home_can_be_written()
    {
        Device lamp = Terrace.Devices.First(device => device.Id.Value == "landing-bulb");
        Terrace.Devices.Where(device => device.SwitchedBy == lamp.SwitchedBy).Should().ContainSingle();

        Home applied = FollowedAdvice.With(Terrace, [Placement("plugs") with { KeptOn = [new(lamp.Id, lamp.SwitchedBy, [], default, default)] }]);

        applied.States.Should().NotContain(state => state.SwitchesOff.Contains(lamp.SwitchedBy!));
        applied.States.Should().Contain(state => state.SwitchesOff.Contains("lounge switch"), "another switch stays");
        ReadBack(applied).States.Select(state => state.SwitchesOff.Length).Should().Equal(applied.States.Select(state => state.SwitchesOff.Length));
    }

    [Fact]
    public void A_circuit_that_the_hub_alone_was_on_leaves_the_states_with_it()
    {
        DeviceId stick = Terrace.Networks[0].Coordinator;
        Home alone = Terrace with
        {
            Devices = [.. Terrace.Devices.Select(device => device.Id == stick ? device with { Circuit = "desk" } : device)],
            States = [new() { Name = "desk off", CircuitsOff = ["desk", "yard"] }],
        };
        HubPlacement hub = new()
        {
            Networks = [Terrace.Networks[0].Name],
            Goals = PlacementGoals.OneWayEveryday,
            StatesHeld = [],
            SitesConsidered = 2,
            OutletsSwitchedOff = 0,
            Apart = [],
            Sites = [new(Terrace.Outlets[5], 60, 60, [new(Terrace.Networks[0].Name, [], [], [], [], null, 0, 0, 0)])],
        };

        Home applied = FollowedAdvice.With(alone, hub);

        applied.States[0].CircuitsOff.Should().Equal("yard");
        ReadBack(applied).States[0].CircuitsOff.Should().Equal("yard");
    }

    [Fact]
    public void A_hub_takes_the_coordinators_of_its_networks_along()
    {
        HubPlacement hub = new()
        {
            Networks = [new("plugs"), new("lighting")],
            Goals = PlacementGoals.OneWayEveryday,
            StatesHeld = [],
            SitesConsidered = 2,
            OutletsSwitchedOff = 0,
            Apart = [],
            Sites = [new(Terrace.Outlets[5], 60, 60, [new(new("plugs"), [Terrace.Outlets[1]], [], [], [], null, 20, 20, 0)])],
        };
        Home applied = FollowedAdvice.With(Terrace, hub);
        Device At(string network) => applied.Devices.First(device => device.Id == Terrace.Networks.First(n => n.Name.Value == network).Coordinator);
        new[] { At("plugs").Point, At("lighting").Point }.Should().OnlyContain(point => point == Terrace.Outlets[5].Point);
        At("meters").Should().Be(Terrace.Devices.First(device => device.Id == Terrace.Networks.First(n => n.Name.Value == "meters").Coordinator));
        applied.Devices[^1].Id.Value.Should().Be($"repeater-{Terrace.Outlets[1].Id}");
    }

    private static Home ReadBack(Home home)
    {
        string folder = Directory.CreateTempSubdirectory("meshsim-").FullName;
        try
        {
            HomeWriter.Write(home, Path.Combine(folder, "home"));
            return HomeFolder.Read(Path.Combine(folder, "home")).Home!;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static RepeaterPlacement Placement(string network, params Outlet[] outlets) => new()
    {
        Network = new(network),
        Unserved = [],
        LowerBound = 0,
        OutletsConsidered = 0,
        Repeaters = [.. outlets.Select(outlet => new PlacedRepeater { Outlet = outlet, Serves = [], UplinkMargin = default, DownlinkMargin = default })],
    };
}
