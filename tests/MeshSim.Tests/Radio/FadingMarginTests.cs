using CsCheck;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class FadingMarginTests
{
    /// <summary>A margin that the table prints as 0 is a rounded root; ours is exact to the precision of the inverse error function.</summary>
    private const double ZeroDb = 1e-12;

    private static readonly ReferenceTable Rayleigh = ReferenceTable.Read("Radio/rayleigh-margin.csv");
    private static readonly ReferenceTable Rician = ReferenceTable.Read("Radio/rician-margin.csv");
    private static readonly ReferenceTable LogNormal = ReferenceTable.Read("Radio/log-normal-margin.csv");
    private static readonly ReferenceTable Suzuki = ReferenceTable.Read("Radio/suzuki-margin.csv");

    public static TheoryData<int> RayleighRows => Rayleigh.Rows(6);

    public static TheoryData<int> RicianRows => Rician.Rows(21);

    public static TheoryData<int> LogNormalRows => LogNormal.Rows(63);

    public static TheoryData<int> SuzukiRows => Suzuki.Rows(30);

    [Theory]
    [MemberData(nameof(RayleighRows))]
    public void Rayleigh_gives_every_printed_margin(int row)
    {
        Decibels margin = FadingMargin.Rayleigh(Rayleigh.Number(row, "availability"));
        Rayleigh.ShouldPrint(row, "margin_linear_vs_mean_power", margin.PowerRatio);
        Rayleigh.ShouldPrint(row, "margin_dB_vs_mean_power", margin.Value);

        Decibels overMedian = margin - FadingMargin.Rayleigh(0.5);
        overMedian.Value.Should().BeApproximately(Rayleigh.Number(row, "margin_dB_vs_median_power"), 1e-10, "ten decimals are printed");
    }

    [Theory]
    [MemberData(nameof(RicianRows))]
    public void Rician_gives_every_printed_margin(int row) =>
        Rician.ShouldPrint(row, "margin_dB_vs_mean_power", FadingMargin.Rician(new(Rician.Number(row, "K_dB")), Rician.Number(row, "availability")).Value);

    [Theory]
    [MemberData(nameof(LogNormalRows))]
    public void Log_normal_gives_every_printed_margin(int row)
    {
        double availability = LogNormal.Number(row, "availability");
        Decibels margin = FadingMargin.LogNormal(new(LogNormal.Number(row, "sigma_dB")), availability);
        if (availability == 0.5) margin.Value.Should().BeApproximately(LogNormal.Number(row, "margin_dB"), ZeroDb);
        else LogNormal.ShouldPrint(row, "margin_dB", margin.Value);
    }

    [Theory]
    [MemberData(nameof(SuzukiRows))]
    public void Suzuki_gives_every_printed_margin(int row) =>
        Suzuki.ShouldPrint(
            row,
            "margin_dB_median_local_mean_over_threshold",
            FadingMargin.Suzuki(new(Suzuki.Number(row, "sigma_dB")), Suzuki.Number(row, "availability")).Value);

    [Fact]
    public void Rician_without_a_steady_wave_is_rayleigh() =>
        FadingMargin.Rician(new(-40), 0.99).Value.Should().BeApproximately(FadingMargin.Rayleigh(0.99).Value, 1e-6, "a ten-thousandth of steady power changes the outage by its square");

    [Fact]
    public void A_higher_availability_never_needs_less() =>
        Gen.Select(Gen.Double[0, 12], Gen.Double[0.5, 0.99], Gen.Double[0, 0.009]).Sample((sigmaDb, availability, more) =>
            FadingMargin.LogNormal(new(sigmaDb), availability + more) >= FadingMargin.LogNormal(new(sigmaDb), availability)
            && FadingMargin.Suzuki(new(sigmaDb), availability + more).Value >= FadingMargin.Suzuki(new(sigmaDb), availability).Value - ZeroDb);

    [Fact]
    public void The_default_planning_margin_is_six_point_four_decibels() =>
        FadingMargin.LogNormal(new(5), 0.9).ToString().Should().Be("6.4 dB");

    [Theory]
    [InlineData(0.49)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void An_availability_outside_the_range_is_refused(double availability)
    {
        FluentActions.Invoking(() => FadingMargin.Rayleigh(availability)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => FadingMargin.LogNormal(new(5), availability)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => FadingMargin.Rician(new(5), availability)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => FadingMargin.Suzuki(new(5), availability)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
