using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Radio;

namespace MeshSim.Tests.Mesh;

public sealed class LinkTableTests
{
    private static readonly Mounting Box = new() { Name = "box", Description = "", Losses = [(new(2440), new(7))], Source = "assumed" };
    private static readonly Network Net = MeshSamples.Network(hopLimit: 5);

    [Fact]
    public void Every_pair_comes_once_in_the_order_of_the_home()
    {
        ImmutableArray<Link> links = LinkTable.Compute(Home(4), Net, new TenDecibelsPerMetre(), state: null);
        links.Select(link => $"{link.From}-{link.To}").Should().Equal("d00-d01", "d00-d02", "d00-d03", "d01-d02", "d01-d03", "d02-d03");
    }

    [Fact]
    public void A_device_that_a_state_turns_off_and_a_device_of_another_network_have_no_links()
    {
        Home home = Home(4);
        home = home with { Devices = home.Devices.SetItem(2, home.Devices[2] with { Network = new("other") }) };
        var state = new State { Name = "night", DevicesOff = [MeshSamples.Id(1)] };
        LinkTable.Compute(home, Net, new TenDecibelsPerMetre(), state).Select(link => $"{link.From}-{link.To}").Should().Equal("d00-d03");
    }

    [Fact]
    public void Mountings_of_both_ends_are_items_and_items_sum_to_the_total()
    {
        Home home = Home(2);
        home = home with { Devices = home.Devices.SetItem(1, home.Devices[1] with { Mounting = Box }) };
        Link link = LinkTable.Compute(home, Net, new TenDecibelsPerMetre(), state: null).Single();
        link.PathLoss.Items.Where(item => item.Kind == LossKind.Mounting).Select(item => (item.Name, item.Loss.Value))
            .Should().Equal(("d00: surface", 0), ("d01: box", 7));
        link.PathLoss.Total.Value.Should().Be(10 + 7);
        link.Received.Dbm.Should().Be(0 - 17);
    }

    [Fact]
    public void A_device_that_states_its_power_sends_with_it()
    {
        Home home = Home(2);
        home = home with { Devices = home.Devices.SetItem(1, home.Devices[1] with { TransmitPower = new(-4) }) };
        Link link = LinkTable.Compute(home, Net, new TenDecibelsPerMetre(), state: null).Single();
        (link.Received.Dbm, link.Reverse.Dbm).Should().Be((-10, -14));
        link.Margin.Value.Should().Be(-14 + 95);
    }

    [Fact]
    public void The_same_links_come_every_time()
    {
        string Once() => string.Join('\n', LinkTable.Compute(Home(12), Net, new TenDecibelsPerMetre(), state: null)
            .Select(link => FormattableString.Invariant($"{link.From} {link.To} {link.Margin.Value:R} {link.Delivery:R} {link.ReverseDelivery:R}")));
        Enumerable.Range(0, 10).Select(_ => Once()).Distinct().Should().ContainSingle();
    }

    /// <summary>Devices one metre apart along x, the coordinator first.</summary>
    private static Home Home(int devices) => new()
    {
        Name = "row",
        Region = "EU",
        FloorPlan = new([new Storey { Name = new("ground"), ElevationMetres = 0, CeilingMetres = 2.5 }]),
        Constructions = ImmutableDictionary<ConstructionName, Construction>.Empty,
        Networks = [Net],
        Devices =
        [
            .. Enumerable.Range(0, devices).Select(i =>
                MeshSamples.Device(i, i == 0 ? Role.Coordinator : Role.Router) with { Point = PlanPoint.FromMetres(i, 0) }),
        ],
    };

    private sealed class TenDecibelsPerMetre : IPathLossModel
    {
        public PathLoss Between(Position from, Position to)
        {
            double distanceMetres = from.DistanceMetresTo(to);
            return new("sample", distanceMetres, [new LossItem { Kind = LossKind.Distance, Name = "distance", Loss = new(10 * distanceMetres) }]);
        }
    }
}
