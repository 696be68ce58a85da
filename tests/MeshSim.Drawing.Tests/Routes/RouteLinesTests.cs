using MeshSim.Devices;
using MeshSim.Drawing.Routes;
using MeshSim.Drawing.Tests.Scenes;

namespace MeshSim.Drawing.Tests.Routes;

public sealed class RouteLinesTests
{
    [Fact]
    public void A_link_that_many_routes_share_is_drawn_once()
    {
        RouteLines routes = RouteLines.On(TwoStoreyFlat.Ground, SyntheticCoverage.Coverage);

        routes.Lines.Should().OnlyHaveUniqueItems().And.ContainSingle(line => line == new RouteLine(new("tv-plug"), new("stick")));
        routes.Lines.Should().BeInAscendingOrder(line => line.From);
    }

    [Fact]
    public void A_link_between_storeys_is_a_stub_on_both()
    {
        StoreyStub below = RouteLines.On(TwoStoreyFlat.Ground, SyntheticCoverage.Coverage).Stubs.Single(stub => stub.Here == new DeviceId("tv-plug"));
        StoreyStub above = RouteLines.On(TwoStoreyFlat.Upper, SyntheticCoverage.Coverage).Stubs.Single(stub => stub.Here == new DeviceId("bed-lamp"));

        below.Caption.Should().Be("▲ from upper");
        above.Caption.Should().Be("▼ to ground");
        above.Others.Should().Equal(new DeviceId("tv-plug"));
    }

    [Fact]
    public void Stubs_from_one_storey_into_one_device_are_counted_together() =>
        new StoreyStub(new("stick"), [new("a"), new("b"), new("c")], TwoStoreyFlat.Upper, IsUp: true, IsOutgoing: false).Caption.Should().Be("▲ 3 from upper");

    [Fact]
    public void Every_link_of_every_route_is_drawn_on_some_storey()
    {
        int links = SyntheticCoverage.Coverage.Devices.Where(reach => reach.Route is not null)
            .SelectMany(reach => reach.Route!.Path.Zip(reach.Route.Path.Skip(1))).Distinct().Count();
        RouteLines ground = RouteLines.On(TwoStoreyFlat.Ground, SyntheticCoverage.Coverage), upper = RouteLines.On(TwoStoreyFlat.Upper, SyntheticCoverage.Coverage);

        (ground.Lines.Length + upper.Lines.Length + ground.Stubs.Sum(stub => stub.Others.Length)).Should().Be(links);
        ground.Stubs.Sum(stub => stub.Others.Length).Should().Be(upper.Stubs.Sum(stub => stub.Others.Length));
    }
}
