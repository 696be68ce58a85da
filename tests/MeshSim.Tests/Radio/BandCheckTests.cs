using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class BandCheckTests
{
    private static readonly RadioProfile Narrow = RadioSamples.Of(Modulation.Fsk, 40, 80, overheadOctets: 21);
    private static readonly RadioProfile Wide = RadioSamples.OQpsk;

    private static readonly BandLimit[] Table =
    [
        Row(868, 868.6, 25, PowerReference.Erp, 0.01),
        Row(869.7, 870, 5, PowerReference.Erp, 1),
        Row(869.7, 870, 25, PowerReference.Erp, 0.01),
        Row(902, 928, 0.75, PowerReference.Eirp, 1),
        Row(902, 928, 1000, PowerReference.Conducted, 1) with { MinBandwidthKilohertz = 500 },
        Row(434, 435, 10, PowerReference.Erp, 1) with { MaxBandwidthKilohertz = 25 },
    ];

    [Fact]
    public void A_device_under_its_limit_is_admitted()
    {
        BandVerdict verdict = Check(Narrow, 868.4, 14);
        verdict.IsAdmitted.Should().BeTrue();
        verdict.Row.Should().Be(Table[0]);
    }

    [Fact]
    public void A_device_above_its_limit_is_a_finding_with_its_excess()
    {
        BandVerdict verdict = Check(Narrow, 868.4, 20);
        verdict.IsAdmitted.Should().BeFalse();
        verdict.Excess.Value.Should().BeApproximately(20 - 2.15 - 13.9794000867, 1e-10, "25 mW are printed to ten decimals of a dBm");
    }

    [Fact]
    public void Antenna_gain_counts_for_radiated_limits() =>
        Check(Narrow with { AntennaGain = new(-4) }, 868.4, 20).IsAdmitted.Should().BeTrue();

    [Theory]
    [InlineData(5, 1)]
    [InlineData(12, 2)]
    public void Of_the_rows_that_admit_a_device_the_one_with_the_freest_use_of_time_is_named(double powerDbm, int row) =>
        Check(Narrow, 869.85, powerDbm).Row.Should().Be(Table[row]);

    [Fact]
    public void A_row_for_wide_signals_does_not_admit_a_narrow_one()
    {
        Check(Narrow, 908.4, 10).IsAdmitted.Should().BeFalse();
        Check(Wide, 908.4, 10).Row.Should().Be(Table[4]);
    }

    [Fact]
    public void A_row_for_narrow_signals_does_not_admit_a_wide_one() => Check(Narrow, 434.5, 0).Row.Should().BeNull();

    [Fact]
    public void A_carrier_outside_every_band_is_a_finding()
    {
        BandVerdict verdict = Check(Narrow, 880, -30);
        verdict.Row.Should().BeNull();
        verdict.IsAdmitted.Should().BeFalse();
    }

    private static BandVerdict Check(RadioProfile radio, double carrierMegahertz, double powerDbm) =>
        BandCheck.Of(radio, new(carrierMegahertz), new(powerDbm), Table);

    private static BandLimit Row(double fromMegahertz, double toMegahertz, double milliwatts, PowerReference reference, double dutyCycle) => new()
    {
        Region = "EU",
        From = new(fromMegahertz),
        To = new(toMegahertz),
        Limit = PowerLevel.FromMilliwatts(milliwatts),
        Reference = reference,
        DutyCycle = dutyCycle,
        Rule = "test",
        Source = "assumed",
    };
}
