using CsCheck;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class NormalDistributionTests
{
    /// <summary>Both error functions of the numerics library are good to about 1e-13 of their value.</summary>
    private const double LibraryShare = 1e-12;

    private static readonly ReferenceTable Tails = ReferenceTable.Read("Radio/normal-tail.csv");
    private static readonly ReferenceTable Quantiles = ReferenceTable.Read("Radio/normal-quantile.csv");

    public static TheoryData<int> TailRows => Tails.Rows(10);

    public static TheoryData<int> QuantileRows => Quantiles.Rows(8);

    [Theory]
    [MemberData(nameof(TailRows))]
    public void Q_gives_every_printed_value(int row) => Tails.ShouldPrint(row, "Q_x", NormalDistribution.Tail(Tails.Number(row, "x")));

    [Theory]
    [MemberData(nameof(QuantileRows))]
    public void The_inverse_of_Q_gives_every_printed_value(int row) =>
        Quantiles.ShouldPrint(row, "Qinv_p", NormalDistribution.TailQuantile(Quantiles.Number(row, "p")));

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
