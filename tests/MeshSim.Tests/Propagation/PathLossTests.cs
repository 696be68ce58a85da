using MeshSim.Propagation;

namespace MeshSim.Tests.Propagation;

public sealed class PathLossTests
{
    [Fact]
    public void The_total_follows_the_items_of_a_changed_copy()
    {
        var loss = new PathLoss("sample", 2, [Item(40)]);
        (loss with { Items = [.. loss.Items, Item(2.5)] }).Total.Value.Should().Be(42.5);
        loss.Total.Value.Should().Be(40);
    }

    private static LossItem Item(double lossDb) => new() { Kind = LossKind.Distance, Name = "sample", Loss = new(lossDb) };
}
