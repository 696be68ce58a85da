using MeshSim.Mesh;

namespace MeshSim.Tests.Mesh;

public sealed class LinkTests
{
    private static readonly Link Sample = MeshSamples.Link(0, 1, delivery: 0.5, reverse: 0.8);

    [Fact]
    public void Expected_transmissions_count_both_directions() => Sample.Etx.Should().BeApproximately(2.5, 1e-15, "one division is exact to the last bit");

    [Fact]
    public void Nothing_arrives_after_any_number_of_transmissions() => MeshSamples.Link(0, 1, delivery: 0).Etx.Should().Be(double.PositiveInfinity);

    [Fact]
    public void Each_end_knows_the_other_and_its_own_delivery()
    {
        Sample.Other(MeshSamples.Id(0)).Should().Be(MeshSamples.Id(1));
        Sample.Other(MeshSamples.Id(1)).Should().Be(MeshSamples.Id(0));
        Sample.DeliveryFrom(MeshSamples.Id(0)).Should().Be(0.5);
        Sample.DeliveryFrom(MeshSamples.Id(1)).Should().Be(0.8);
    }
}
