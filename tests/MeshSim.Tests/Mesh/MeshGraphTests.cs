using MeshSim.Devices;
using MeshSim.Mesh;

namespace MeshSim.Tests.Mesh;

public sealed class MeshGraphTests
{
    private static readonly Network Net = MeshSamples.Network(hopLimit: 5);

    [Fact]
    public void Usable_links_come_by_the_id_of_the_other_end()
    {
        MeshGraph graph = MeshSamples.Graph(
            Net, [Role.Router, Role.Router, Role.Router], MeshSamples.Link(1, 3), MeshSamples.Link(1, 2), MeshSamples.Link(0, 1));
        graph.UsableLinks(1).Select(entry => entry.Neighbour).Should().Equal(0, 2, 3);
    }

    [Fact]
    public void A_link_over_which_nothing_arrives_is_not_usable()
    {
        MeshGraph graph = MeshSamples.Graph(Net, [Role.Router], MeshSamples.Link(0, 1, delivery: 0));
        graph.UsableLinks(0).Should().BeEmpty();
        graph.Links.Should().ContainSingle();
    }

    [Fact]
    public void A_link_to_an_unknown_device_is_refused() =>
        FluentActions.Invoking(() => MeshSamples.Graph(Net, [Role.Router], MeshSamples.Link(0, 7))).Should().Throw<ArgumentException>().WithMessage("*d07*");

    [Fact]
    public void Two_devices_of_one_id_are_refused() =>
        FluentActions.Invoking(() => new MeshGraph(Net, [MeshSamples.Device(0, Role.Coordinator), MeshSamples.Device(0, Role.Router)], [], MeshSamples.DesignMargin))
            .Should().Throw<ArgumentException>();
}
