using CsCheck;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class NormalDistributionTests
{
    /// <summary>Both error functions of the numerics library are good to about 1e-13 of their value.</summary>
    private const double LibraryShare = 1e-12;

    public static readonly ReproducedTable Tails = new(
        "Radio/normal-tail.csv", 10, ["x"], row => [row.Within("Q_x", NormalDistribution.Tail(row.Number("x")))]);

    public static readonly ReproducedTable Quantiles = new(
        "Radio/normal-quantile.csv", 8, ["p"], row => [row.Within("Qinv_p", NormalDistribution.TailQuantile(row.Number("p")))]);

    public static TheoryData<int> TailPlaces => Tails.Places;

    public static TheoryData<int> QuantilePlaces => Quantiles.Places;

    [Theory]
    [MemberData(nameof(TailPlaces))]
    public void Q_gives_every_printed_value(int place) => Tails.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(QuantilePlaces))]
    public void The_inverse_of_Q_gives_every_printed_value(int place) => Quantiles.ShouldBeMetAt(place);

    [Fact]
    public void The_inverse_undoes_Q() =>
        Gen.Double[1e-9, 0.999].Sample(p => Math.Abs(NormalDistribution.Tail(NormalDistribution.TailQuantile(p)) - p) <= LibraryShare * 100 * p);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(-0.5)]
    [InlineData(double.NaN)]
    public void A_probability_that_is_none_is_refused(double probability) =>
        FluentActions.Invoking(() => NormalDistribution.TailQuantile(probability)).Should().Throw<ArgumentOutOfRangeException>();
}
