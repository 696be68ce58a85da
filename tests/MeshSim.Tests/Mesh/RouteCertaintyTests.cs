using MeshSim.Mesh;

namespace MeshSim.Tests.Mesh;

public sealed class RouteCertaintyTests
{
    [Fact]
    public void A_route_holds_when_all_its_links_do()
    {
        Link near = MeshSamples.Link(0, 1, marginDb: 5) with { Uncertainty = new(new(5), default) };
        Link far = MeshSamples.Link(1, 2, marginDb: 0) with { Uncertainty = new(new(5), default) };
        Route route = new() { Path = [MeshSamples.Id(2), MeshSamples.Id(1), MeshSamples.Id(0)], Etx = 2, WeakestMargin = new(0), Delivery = 1 };

        RouteCertainty sure = RouteCertainty.Of([near, far, MeshSamples.Link(0, 2)], route);

        sure.Weakest.Should().BeSameAs(far);
        sure.Holds.Should().BeApproximately(0.5 * 0.841344746069, 1e-11);
        FluentActions.Invoking(() => RouteCertainty.Of([near], route)).Should().Throw<ArgumentException>();
    }
}
