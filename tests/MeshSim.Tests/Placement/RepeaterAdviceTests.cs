using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Placement;
using MeshSim.Radio;
using MeshSim.Studies;
using MeshSim.Tests.Mesh;

namespace MeshSim.Tests.Placement;

/// <summary>Devices and outlets in a row in the open, where each margin follows from one distance.</summary>
public sealed class RepeaterAdviceTests
{
    /// <summary>Some sums and differences of numbers below 200.</summary>
    private const double OrderOfSumDb = 1e-10;

    private static readonly Network Network = Weak(MeshSamples.Network(hopLimit: 3));

    [Fact]
    public void A_chain_of_two_names_who_hangs_on_each_and_its_weakest_links()
    {
        // The coordinator at 0 m; the links of the way at 100, 120 and 90 m count, those of 190 m and more do not.
        Home home = Row(Network, hopLimit: 3, deviceMetres: [310], outletMetres: [220, 100]);
        RepeaterPlacement placement = Place(home);
        placement.ServesAll.Should().BeTrue();
        placement.IsProven.Should().BeTrue();
        placement.Repeaters.Select(repeater => repeater.Outlet.Id.Value).Should().Equal("o0", "o1");
        placement.Repeaters.Should().OnlyContain(repeater => repeater.Serves.SequenceEqual(new[] { MeshSamples.Id(1) }));
        placement.Repeaters[0].UplinkMargin.Value.Should().BeApproximately(MarginDb(home, 120), OrderOfSumDb);
        placement.Repeaters[0].DownlinkMargin.Value.Should().BeApproximately(MarginDb(home, 90), OrderOfSumDb);
        placement.Repeaters[1].UplinkMargin.Value.Should().BeApproximately(MarginDb(home, 100), OrderOfSumDb);
        placement.Repeaters[1].DownlinkMargin.Value.Should().BeApproximately(MarginDb(home, 120), OrderOfSumDb);
    }

    [Fact]
    public void A_device_too_far_from_every_relay_lacks_what_its_best_link_lacks()
    {
        Home home = Row(Network, hopLimit: 3, deviceMetres: [400], outletMetres: [100, 200]);
        UnservedDevice unserved = Place(home).Unserved.Single();
        unserved.Device.Should().Be(MeshSamples.Id(1));
        unserved.BestRelay.Should().Be("outlet o1 in shed");
        unserved.Shortfall!.Value.Value.Should().BeApproximately(DesignMarginDb(home) - MarginDb(home, 200), OrderOfSumDb);
    }

    [Fact]
    public void A_device_beyond_the_hop_limit_lacks_hops_and_no_level()
    {
        Home home = Row(Network, hopLimit: 2, deviceMetres: [310], outletMetres: [100, 220]);
        Place(home).Unserved.Single().Should().Be(new UnservedDevice(MeshSamples.Id(1), null, "outlet o1 in shed"));
    }

    [Fact]
    public void Repeaters_do_nothing_in_a_star()
    {
        Network star = Network with { Radio = Network.Radio with { Topology = Topology.Star } };
        Home home = Row(star, hopLimit: 1, deviceMetres: [90, 220], outletMetres: [100]);
        RepeaterPlacement placement = Place(home);
        placement.Repeaters.Should().BeEmpty();
        placement.OutletsConsidered.Should().Be(0);
        placement.IsProven.Should().BeTrue();
        UnservedDevice unserved = placement.Unserved.Single();
        unserved.Device.Should().Be(MeshSamples.Id(2));
        unserved.BestRelay.Should().Be("coordinator d00 in shed");
        unserved.Shortfall!.Value.Value.Should().BeApproximately(DesignMarginDb(home) - MarginDb(home, 220), OrderOfSumDb);
    }

    [Fact]
    public void An_outlet_without_power_is_not_considered()
    {
        Home home = Row(Network, hopLimit: 3, deviceMetres: [200], outletMetres: [100, 110]);
        home = home with { Outlets = home.Outlets.SetItem(0, home.Outlets[0] with { Circuit = "garden" }) };
        Place(home).Repeaters.Single().Outlet.Id.Value.Should().Be("o0");
        RepeaterPlacement dark = Place(home, new State { Name = "night", CircuitsOff = ["garden"] });
        dark.Repeaters.Single().Outlet.Id.Value.Should().Be("o1");
        dark.OutletsConsidered.Should().Be(1);
    }

    [Fact]
    public void An_outlet_with_a_router_of_the_network_in_it_is_taken()
    {
        Home home = Row(Network, hopLimit: 3, deviceMetres: [200], outletMetres: [100, 110]);
        Outlet first = home.Outlets[0];
        Device router = home.Devices[1] with { Id = new("plugged-in"), Role = Role.Router, Storey = first.Storey, Point = first.Point, HeightMetres = first.HeightMetres };

        Place(home).OutletsConsidered.Should().Be(2);
        Place(home with { Devices = home.Devices.Add(router) }).OutletsConsidered.Should().Be(1);
        Place(home with { Devices = home.Devices.Add(router with { Role = Role.EndDevice }) }).OutletsConsidered.Should().Be(2, "a sensor may hang beside it");
    }

    [Fact]
    public void Without_a_coordinator_nobody_is_served()
    {
        Home home = Row(Network, hopLimit: 3, deviceMetres: [50, 60], outletMetres: [100]);
        RepeaterPlacement placement = Place(home, new State { Name = "out", DevicesOff = [Network.Coordinator] });
        placement.Repeaters.Should().BeEmpty();
        placement.Unserved.Select(unserved => unserved.Device).Should().Equal(MeshSamples.Id(1), MeshSamples.Id(2));
        placement.Unserved.Should().OnlyContain(unserved =>
            unserved.Shortfall == null && unserved.BestRelay == "none: coordinator d00 has no power");
    }

    [Fact]
    public void A_state_that_takes_the_coordinator_with_it_says_by_what_and_how_many_outlets_are_left()
    {
        Home home = Row(Network, hopLimit: 3, deviceMetres: [50], outletMetres: [10, 20, 30]);
        home = home with
        {
            Devices = home.Devices.SetItem(0, home.Devices[0] with { Circuit = "ring", SwitchedBy = "hall" }),
            Outlets = home.Outlets.SetItem(1, home.Outlets[1] with { Circuit = "ring" }),
            States =
            [
                new() { Name = "fuse", CircuitsOff = ["ring"], MustHold = true },
                new() { Name = "door shut", SwitchesOff = ["hall"], MustHold = true },
                new() { Name = "unplugged", DevicesOff = [Network.Coordinator], MustHold = true },
                new() { Name = "holiday", CircuitsOff = ["ring"] },
            ],
        };
        StudyOptions options = new() { Goals = new() { Ways = 1 } };
        RepeaterPlacement placement = CoverageStudy.Repeaters(CoverageStudy.Run(home, home.Networks[0], options), options);
        placement.CoordinatorOff.Should().Equal(
            new CoordinatorOutage("fuse", PowerLoss.Circuit, "ring", 2),
            new CoordinatorOutage("door shut", PowerLoss.Switch, "hall", 3),
            new CoordinatorOutage("unplugged", PowerLoss.ByName, null, 0));
        placement.Unserved.Should().OnlyContain(unserved => unserved.IsCoordinatorOff && unserved.Device == MeshSamples.Id(1));
        Place(home, home.States[3]).CoordinatorOff.Should().Equal(new CoordinatorOutage("holiday", PowerLoss.Circuit, "ring", 2));
    }

    [Fact]
    public void The_hub_moves_to_a_circuit_that_stays_on()
    {
        // The nearest outlet is on the circuit that trips; 100 m away there is one that is not, from where the device at 50 m is in reach.
        Home home = Row(Network, hopLimit: 3, deviceMetres: [50], outletMetres: [10, 100]);
        home = home with
        {
            Devices = home.Devices.SetItem(0, home.Devices[0] with { Circuit = "ring" }),
            Outlets = home.Outlets.SetItem(0, home.Outlets[0] with { Circuit = "ring" }),
            States = [new() { Name = "fuse", CircuitsOff = ["ring"], MustHold = true }],
        };
        HubPlacement asked = HubStudy.Run(home, home.Networks, [], new() { Goals = new() { Ways = 1 } });
        asked.Sites.Select(site => (site.Outlet?.Id.Value, site.Unserved, string.Join(", ", site.DarkIn)))
            .Should().Equal(("o1", 0, ""), (null, 1, "fuse"), ("o0", 1, "fuse"));
        HubPlacement everyday = HubStudy.Run(home, home.Networks, [], new() { Goals = PlacementGoals.OneWayEveryday });
        everyday.Sites.Select(site => (site.Outlet?.Id.Value, site.Unserved)).Should().Equal((null, 0), ("o1", 0));
        (asked.OutletsSwitchedOff, everyday.OutletsSwitchedOff).Should().Be((0, 1));
    }

    private static Network Weak(Network network) => network with { Radio = network.Radio with { TransmitPower = new(-6) } };

    private static RepeaterPlacement Place(Home home, State? state = null)
    {
        StudyOptions options = new() { State = state, Goals = PlacementGoals.OneWayEveryday };
        return CoverageStudy.Repeaters(CoverageStudy.Run(home, home.Networks[0], options), options);
    }

    private static double DesignMarginDb(Home home) =>
        FadingMargin.LogNormal(home.Parameters.Shadowing, home.Parameters.Availability).Value;

    /// <summary>By hand: power − (free space at 1 m + 20 log d) − required level.</summary>
    private static double MarginDb(Home home, double distanceMetres)
    {
        Network network = home.Networks[0];
        double atOneMetreDb = 20 * Math.Log10(4 * Math.PI / network.Carrier.WavelengthMetres);
        double requiredDbm = new LinkBudget(network.Radio, home.Parameters.Shadowing).RequiredLevel.Dbm;
        return network.Radio.TransmitPower.Dbm - atOneMetreDb - (20 * Math.Log10(distanceMetres)) - requiredDbm;
    }

    /// <summary>End devices and outlets on a line from the coordinator; the reach at the design margin lies near 130 m.</summary>
    private static Home Row(Network network, int hopLimit, double[] deviceMetres, double[] outletMetres) => new()
    {
        Name = "row",
        Region = "EU",
        FloorPlan = new FloorPlan([new Storey { Name = new("ground"), ElevationMetres = 0, CeilingMetres = 3 }]),
        Constructions = ImmutableDictionary<ConstructionName, MeshSim.Materials.Construction>.Empty,
        Networks = [network with { HopLimit = hopLimit }],
        Devices =
        [
            .. deviceMetres.Prepend(0).Select((xMetres, i) => MeshSamples.Device(i, i == 0 ? Role.Coordinator : Role.EndDevice) with
            {
                Point = PlanPoint.FromMetres(xMetres, 0),
                Room = new("shed"),
            }),
        ],
        Outlets =
        [
            .. outletMetres.Select((xMetres, i) => new Outlet
            {
                Id = new(FormattableString.Invariant($"o{i}")),
                Storey = new("ground"),
                Point = PlanPoint.FromMetres(xMetres, 0),
                HeightMetres = 1,
                Room = new("shed"),
            }),
        ],
    };
}
