using System.Collections.Immutable;
using MeshSim.Materials;

namespace MeshSim.Tests.Materials;

public class StatedLossTests
{
    // A few roundings of numbers of some decibels.
    private const double Rounding = 1e-12;

    private static readonly ImmutableArray<StatedLoss> Stated = [new(new(400), new(2)), new(new(1600), new(8)), new(new(3200), new(6))];

    [Theory]
    [InlineData(100, 2)]
    [InlineData(400, 2)]
    [InlineData(800, 5)]
    [InlineData(1600, 8)]
    [InlineData(2262.7416997969522, 7)]
    [InlineData(3200, 6)]
    [InlineData(9000, 6)]
    public void Runs_straight_over_the_logarithm_of_frequency_and_level_beyond(double megahertz, double expectedDb) =>
        StatedLoss.At(Stated, new(megahertz)).Value.Should().BeApproximately(expectedDb, Rounding);

    [Fact]
    public void Nothing_stated_is_refused()
    {
        Action empty = () => StatedLoss.At([], new(2440));
        empty.Should().Throw<ArgumentException>();
    }
}
