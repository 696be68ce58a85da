using CsCheck;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class LinkBudgetTests
{
    [Fact]
    public void The_worse_direction_counts()
    {
        var budget = new LinkBudget(RadioSamples.OQpsk with { AntennaGain = new(-2) }, new(5));
        LinkLevels levels = budget.Between(new(8), new(3), new(80));
        levels.Received.Should().Be(new PowerLevel(-76));
        levels.Reverse.Should().Be(new PowerLevel(-81));
        levels.Margin.Should().Be(levels.Reverse - budget.RequiredLevel);
        levels.Delivery.Should().BeGreaterThan(levels.ReverseDelivery);
    }

    [Fact]
    public void More_loss_never_helps() =>
        Gen.Select(Gen.Double[40, 130], Gen.Double[0, 10]).Sample((lossDb, moreDb) =>
        {
            LinkLevels less = Budget.Between(new(4), new(0), new(lossDb)), more = Budget.Between(new(4), new(0), new(lossDb + moreDb));
            return more.Margin <= less.Margin
                && more.Delivery <= less.Delivery + DeliveryRatio.Accuracy
                && more.ReverseDelivery <= less.ReverseDelivery + DeliveryRatio.Accuracy;
        });

    private static readonly LinkBudget Budget = new(RadioSamples.OQpsk, new(5));
}
