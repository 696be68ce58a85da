using MeshSim.Mesh.Reliability;

namespace MeshSim.Tests.Mesh.Reliability;

public sealed class ConnectionChanceTests
{
    /// <summary>The formula evaluated in another arrangement.</summary>
    private const double Arrangement = 1e-12;

    private const double Z = 1.959963984540054;

    [Theory]
    [InlineData(1, 10)]
    [InlineData(15, 20)]
    [InlineData(99_990, 100_000)]
    public void The_bounds_are_where_the_score_test_just_accepts(int connected, int draws)
    {
        // Wilson's bounds solve (p̂ − p)² = z² p (1 − p) / n.
        var chance = new ConnectionChance(default, connected, draws);
        foreach (double p in new[] { chance.Interval.Low, chance.Interval.High })
            Math.Pow(chance.Probability - p, 2).Should().BeApproximately(Z * Z * p * (1 - p) / draws, Arrangement);
        chance.Probability.Should().BeInRange(chance.Interval.Low, chance.Interval.High);
    }

    [Fact]
    public void None_and_all_are_not_taken_for_certain()
    {
        (double low, double high) = new ConnectionChance(default, 0, 1000).Interval;
        low.Should().Be(0);
        high.Should().BeApproximately(Z * Z / (1000 + (Z * Z)), Arrangement);
        (low, high) = new ConnectionChance(default, 1000, 1000).Interval;
        low.Should().BeApproximately(1000 / (1000 + (Z * Z)), Arrangement);
        high.Should().Be(1);
    }
}
