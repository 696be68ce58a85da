using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.FloorPlans;
using MeshSim.Mesh;
using MeshSim.Studies;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Studies;

public sealed class CoverageStudyTests
{
    private static readonly ImmutableDictionary<string, Home> Homes = new[] { "harbour-flat", "quay-terrace" }.ToImmutableDictionary(
        name => name, name => HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", name)).Home!);

    /// <summary>Coarse, so that the maps of all storeys take a second.</summary>
    private static readonly StudyOptions Coarse = new() { GridStepMetres = 0.5 };

    public static TheoryData<string, string> Networks
    {
        get
        {
            var networks = new TheoryData<string, string>();
            foreach ((string name, Home home) in Homes.OrderBy(entry => entry.Key, StringComparer.Ordinal))
                foreach (Network network in home.Networks)
                    networks.Add(name, network.Name.Value);
            return networks;
        }
    }

    [Theory]
    [MemberData(nameof(Networks))]
    public void Every_device_but_the_coordinator_is_answered_for(string home, string network)
    {
        NetworkCoverage coverage = Run(home, network, Coarse);
        coverage.Devices.Select(reach => reach.Device).Should().Equal(
            coverage.Home.DevicesOf(coverage.Network).Select(device => device.Id).Where(id => id != coverage.Network.Coordinator));
        coverage.Devices.Should().OnlyContain(reach => reach.IsReached == (reach.NearestLink == null));
        coverage.Devices.Where(reach => reach.IsReached).Should().OnlyContain(reach =>
            reach.Route!.WeakestMargin >= coverage.DesignMargin && reach.Route.Hops <= coverage.Network.HopLimit && reach.DisjointRoutes >= 1);
    }

    [Theory]
    [MemberData(nameof(Networks))]
    public void Items_of_every_link_sum_to_its_loss_and_its_level(string home, string network)
    {
        // Sums of a dozen numbers below 200 in two orders.
        const double OrderOfSumDb = 1e-10;
        NetworkCoverage coverage = Run(home, network, Coarse);
        foreach (Link link in coverage.Links)
        {
            Device sender = coverage.Home.Devices.Single(device => device.Id == link.From);
            double powerDbm = (sender.TransmitPower ?? coverage.Network.Radio.TransmitPower).Dbm;
            double itemsDb = link.PathLoss.Items.Sum(item => item.Loss.Value);
            link.PathLoss.Total.Value.Should().BeApproximately(itemsDb, OrderOfSumDb);
            link.Received.Dbm.Should().BeApproximately(powerDbm + (2 * coverage.Network.Radio.AntennaGain.Value) - itemsDb, OrderOfSumDb);
        }
    }

    [Theory]
    [MemberData(nameof(Networks))]
    public void Opening_all_doors_and_windows_never_lowers_a_margin(string home, string network)
    {
        IEnumerable<Wall> walls = Homes[home].FloorPlan.Storeys.SelectMany(storey => storey.Walls);
        var open = new State { Name = "all open", Open = [.. walls.SelectMany(wall => wall.Openings).Select(opening => opening.Name)] };
        ImmutableArray<Link> closed = Run(home, network, Coarse).Links, opened = Run(home, network, Coarse with { State = open }).Links;
        opened.Zip(closed).Should().OnlyContain(pair => pair.First.Margin >= pair.Second.Margin);
        if (closed.Length > 20) opened.Zip(closed).Should().Contain(pair => pair.First.Margin > pair.Second.Margin);
    }

    [Theory]
    [MemberData(nameof(Networks))]
    public void A_map_is_as_good_as_the_best_relay_and_its_dark_shares_are_shares(string home, string network)
    {
        NetworkCoverage coverage = Run(home, network, Coarse);
        foreach (Storey storey in coverage.Home.FloorPlan.Storeys)
        {
            MarginMap map = CoverageStudy.Map(coverage, storey.Name, Coarse);
            map.Rooms.Select(room => room.Room).Should().Equal(storey.Rooms.Select(room => room.Name));
            map.Rooms.Should().OnlyContain(room => room.DarkShare >= 0 && room.DarkShare <= 1);
            map.Margin.Values.Should().OnlyContain(margin => float.IsFinite(margin));
        }
    }

    [Fact]
    public void With_the_coordinator_off_everything_is_dark()
    {
        Home home = Homes["harbour-flat"];
        NetworkCoverage coverage = CoverageStudy.Run(home, home.Networks[0], Coarse with { State = new State { Name = "out", DevicesOff = [home.Networks[0].Coordinator] } });
        MarginMap map = CoverageStudy.Map(coverage, home.FloorPlan.Storeys[0].Name, Coarse);
        coverage.Devices.Should().OnlyContain(reach => !reach.IsReached);
        map.Rooms.Should().OnlyContain(room => room.DarkShare == 1);
    }

    [Fact]
    public void A_relay_at_the_end_of_the_hop_limit_serves_nobody()
    {
        Home home = Homes["harbour-flat"];
        Network direct = home.Networks[0] with { HopLimit = 1 };
        NetworkCoverage coverage = CoverageStudy.Run(home, direct, Coarse);
        MarginMapping.RelaysOf(coverage).Select(device => device.Id).Should().Equal(direct.Coordinator);
        MarginMapping.RelaysOf(coverage with { Network = home.Networks[0] }).Length.Should().BeGreaterThan(1);
    }

    [Fact]
    public void A_state_that_opens_an_unknown_door_is_refused()
    {
        Home home = Homes["harbour-flat"];
        FluentActions.Invoking(() => CoverageStudy.Run(home, home.Networks[0], Coarse with { State = new State { Name = "x", Open = ["no such door"] } }))
            .Should().Throw<ArgumentException>().WithMessage("*no such door*");
    }

    private static NetworkCoverage Run(string home, string network, StudyOptions options) =>
        CoverageStudy.Run(Homes[home], Homes[home].Networks.Single(one => one.Name.Value == network), options);
}
