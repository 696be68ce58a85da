using CsCheck;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class FadingMarginTests
{
    /// <summary>A margin that the table prints as 0 is a rounded root; ours is exact to the precision of the inverse error function.</summary>
    private const double ZeroDb = 1e-12;

    /// <summary>Margins over the median are differences of numbers of ten printed decimals.</summary>
    private const double TenDecimalsDb = 1e-10;

    public static readonly ReproducedTable Rayleigh = new("Radio/rayleigh-margin.csv", 6, ["availability"], CompareRayleigh);

    public static readonly ReproducedTable Rician = new("Radio/rician-margin.csv", 21, ["K_dB", "availability"], CompareRician);

    public static readonly ReproducedTable LogNormal = new("Radio/log-normal-margin.csv", 63, ["sigma_dB", "availability"], CompareLogNormal);

    public static readonly ReproducedTable Suzuki = new("Radio/suzuki-margin.csv", 30, ["sigma_dB", "availability"], CompareSuzuki);

    public static TheoryData<int> RayleighPlaces => Rayleigh.Places;

    public static TheoryData<int> RicianPlaces => Rician.Places;

    public static TheoryData<int> LogNormalPlaces => LogNormal.Places;

    public static TheoryData<int> SuzukiPlaces => Suzuki.Places;

    [Theory]
    [MemberData(nameof(RayleighPlaces))]
    public void Rayleigh_gives_every_printed_margin(int place) => Rayleigh.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(RicianPlaces))]
    public void Rician_gives_every_printed_margin(int place) => Rician.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(LogNormalPlaces))]
    public void Log_normal_gives_every_printed_margin(int place) => LogNormal.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(SuzukiPlaces))]
    public void Suzuki_gives_every_printed_margin(int place) => Suzuki.ShouldBeMetAt(place);

    [Fact]
    public void Rician_without_a_steady_wave_is_rayleigh() =>
        FadingMargin.Rician(new(-40), 0.99).Value.Should().BeApproximately(FadingMargin.Rayleigh(0.99).Value, 1e-6, "a ten-thousandth of steady power changes the outage by its square");

    [Theory]
    [MemberData(nameof(RicianPlaces))]
    public void Rician_on_no_shadowing_gives_every_printed_margin(int place)
    {
        PublishedRow row = Rician.Rows[place];
        double marginDb = FadingMargin.ShadowedRician(new(row.Number("K_dB")), Decibels.Zero, row.Number("availability")).Value;
        new[] { row.Within("margin_dB_vs_mean_power", marginDb) }.ShouldHold();
    }

    [Theory]
    [InlineData(3, 0.9)]
    [InlineData(8, 0.99)]
    public void Rician_on_shadowing_without_a_steady_wave_is_suzuki(double sigmaDb, double availability) =>
        FadingMargin.ShadowedRician(new(-40), new(sigmaDb), availability).Value
            .Should().BeApproximately(FadingMargin.Suzuki(new(sigmaDb), availability).Value, 1e-6, "a ten-thousandth of steady power changes the outage by its square");

    [Fact]
    public void Fading_and_shadowing_together_need_less_than_the_sum_of_their_margins() =>
        FadingMargin.ShadowedRician(new(6), new(5), 0.9).Value.Should().BeInRange(
            FadingMargin.LogNormal(new(5), 0.9).Value,
            FadingMargin.LogNormal(new(5), 0.9).Value + FadingMargin.Rician(new(6), 0.9).Value);

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

    private static IEnumerable<Comparison> CompareRayleigh(PublishedRow row)
    {
        Decibels margin = FadingMargin.Rayleigh(row.Number("availability"));
        yield return row.Within("margin_dB_vs_mean_power", margin.Value);
        yield return row.Within("margin_linear_vs_mean_power", margin.PowerRatio);
        yield return row.Near("margin_dB_vs_median_power", (margin - FadingMargin.Rayleigh(0.5)).Value, TenDecimalsDb, "dB");
    }

    private static IEnumerable<Comparison> CompareRician(PublishedRow row) =>
        [row.Within("margin_dB_vs_mean_power", FadingMargin.Rician(new(row.Number("K_dB")), row.Number("availability")).Value)];

    private static IEnumerable<Comparison> CompareLogNormal(PublishedRow row)
    {
        double availability = row.Number("availability");
        double marginDb = FadingMargin.LogNormal(new(row.Number("sigma_dB")), availability).Value;
        yield return availability == 0.5 ? row.Near("margin_dB", marginDb, ZeroDb, "dB") : row.Within("margin_dB", marginDb);
    }

    private static IEnumerable<Comparison> CompareSuzuki(PublishedRow row)
    {
        Decibels margin = FadingMargin.Suzuki(new(row.Number("sigma_dB")), row.Number("availability"));
        yield return row.Within("margin_dB_median_local_mean_over_threshold", margin.Value);
    }
}
