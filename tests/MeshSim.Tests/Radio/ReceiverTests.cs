using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class ReceiverTests
{
    public static readonly ReproducedTable Noise =
        new("Radio/noise-floor.csv", 10, ["noise_bandwidth_Hz", "noise_figure_dB"], CompareNoise);

    public static readonly ReproducedTable SubGhz = new("Radio/g9959-sensitivity.csv", 12, ["rate", "noise_figure_dB"], CompareSubGhz);

    public static TheoryData<int> NoisePlaces => Noise.Places;

    public static TheoryData<int> SubGhzPlaces => SubGhz.Places;

    public static TheoryData<Modulation> Modulations => [.. Enum.GetValues<Modulation>()];

    [Theory]
    [MemberData(nameof(NoisePlaces))]
    public void Noise_and_required_sinr_give_every_printed_sensitivity(int place) => Noise.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(SubGhzPlaces))]
    public void Sub_ghz_rates_give_every_printed_sensitivity(int place) => SubGhz.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(Modulations))]
    public void One_reference_frame_in_a_hundred_is_lost_at_the_required_level(Modulation modulation)
    {
        RadioProfile radio = RadioSamples.Of(modulation, 20, 600, overheadOctets: 6) with { FrameOctets = 20 };
        var receiver = new Receiver(radio);
        receiver.LossAt(receiver.RequiredLevel).Should().BeApproximately(Receiver.ReferenceLoss, 1e-12, "the root is found to 1e-13 dB");
    }

    [Fact]
    public void The_sensitivity_decides_where_it_is_worse_than_noise()
    {
        var receiver = new Receiver(RadioSamples.OQpsk with { NoiseFigure = Decibels.Zero });
        receiver.RequiredLevel.Should().Be(RadioSamples.OQpsk.Sensitivity);
        receiver.RequiredLevel.Should().BeGreaterThan(receiver.NoiseFloor + receiver.RequiredSinr);
    }

    [Fact]
    public void A_strong_level_loses_nothing_and_a_weak_one_everything()
    {
        var receiver = new Receiver(RadioSamples.OQpsk);
        receiver.LossAt(new(30)).Should().Be(0);
        receiver.LossAt(new(-200)).Should().Be(1);
    }

    [Fact]
    public void A_profile_with_an_impossible_frame_is_refused() =>
        FluentActions.Invoking(() => new Receiver(RadioSamples.OQpsk with { FrameOctets = 0 })).Should().Throw<ArgumentOutOfRangeException>();

    private static IEnumerable<Comparison> CompareNoise(PublishedRow row)
    {
        double bandwidthKilohertz = row.Number("noise_bandwidth_Hz") / 1e3;
        var receiver = new Receiver(RadioSamples.OQpsk with
        {
            NoiseBandwidthKilohertz = bandwidthKilohertz,
            NoiseFigure = new(row.Number("noise_figure_dB")),
            Sensitivity = RadioSamples.NoiseDecides,
        });
        yield return row.Within("sensitivity_dBm_PER1pct_20octets", receiver.RequiredLevel.Dbm);
        yield return row.Within("kTB_dBm_290K", ThermalNoise.Floor(bandwidthKilohertz, Decibels.Zero).Dbm);
        yield return row.Within("noise_floor_dBm", receiver.NoiseFloor.Dbm);
    }

    private static IEnumerable<Comparison> CompareSubGhz(PublishedRow row)
    {
        RadioProfile radio = RadioSamples.Of(
            Modulation.Fsk, row.Number("bit_rate") / 1e3, row.Number("carson_bandwidth_Hz") / 1e3, overheadOctets: 11);
        var receiver = new Receiver(radio with
        {
            NoiseFigure = new(row.Number("noise_figure_dB")),
            Sensitivity = RadioSamples.NoiseDecides,
        });
        yield return row.Within("sensitivity_dBm_FER1pct_20B", receiver.RequiredLevel.Dbm);
        yield return row.Within("required_SNR_dB_in_carson_bw", receiver.RequiredSinr.Value);
        yield return row.Within("noise_floor_dBm_in_carson_bw", receiver.NoiseFloor.Dbm);
    }
}
