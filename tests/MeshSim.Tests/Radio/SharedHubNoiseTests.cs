using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class SharedHubNoiseTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(SharedHubNoise.CloseByMetres)]
    public void Close_by_the_floor_rises_by_twenty_decibels(double leadMetres) =>
        SharedHubNoise.Rise(leadMetres).Value.Should().BeApproximately(20, 1e-12, "a ratio goes to a power and back");

    [Theory]
    [InlineData(0.5, 6.95)] // 99 / 25 = 3.96 of the noise on top of it
    [InlineData(1, 2.99)]   // 99 / 100
    [InlineData(1.5, 1.58)] // 99 / 225
    [InlineData(3, 0.45)]   // 99 / 900
    public void The_added_power_falls_with_the_square_of_the_lead(double leadMetres, double riseDb) =>
        SharedHubNoise.Rise(leadMetres).Value.Should().BeApproximately(riseDb, 0.005, "two decimals are worked out by hand");

    [Fact]
    public void A_negative_lead_is_refused() =>
        FluentActions.Invoking(() => SharedHubNoise.Rise(-1)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*0 to 10 m*");
}
