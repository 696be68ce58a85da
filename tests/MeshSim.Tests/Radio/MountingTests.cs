using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class MountingTests
{
    private const double LastBit = 1e-14;

    private static readonly Mounting Metal = new()
    {
        Name = "metal",
        Description = "round figures",
        Losses = [(new(400), new(16)), (new(800), new(12)), (new(3200), new(8))],
        Source = "assumed",
    };

    [Theory]
    [InlineData(100, 16)]
    [InlineData(400, 16)]
    [InlineData(565.685424949238, 14)]
    [InlineData(800, 12)]
    [InlineData(1600, 10)]
    [InlineData(3200, 8)]
    [InlineData(6000, 8)]
    public void Loss_runs_straight_over_the_logarithm_of_frequency_and_level_beyond(double megahertz, double lossDb) =>
        Metal.LossAt(new(megahertz)).Value.Should().BeApproximately(lossDb, LastBit * 10);

    [Fact]
    public void A_single_loss_holds_everywhere() =>
        (Metal with { Losses = [(new(800), new(3))] }).LossAt(new(2440)).Should().Be(new Decibels(3));

    [Fact]
    public void A_mounting_without_losses_is_refused() =>
        FluentActions.Invoking(() => (Metal with { Losses = [] }).LossAt(new(800))).Should().Throw<ArgumentException>();
}
