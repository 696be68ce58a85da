using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class ReceiverTests
{
    private static readonly ReferenceTable Noise = ReferenceTable.Read("Radio/noise-floor.csv");
    private static readonly ReferenceTable SubGhz = ReferenceTable.Read("Radio/g9959-sensitivity.csv");

    public static TheoryData<int> NoiseRows => Noise.Rows(10);

    public static TheoryData<int> SubGhzRows => SubGhz.Rows(12);

    public static TheoryData<Modulation> Modulations => [.. Enum.GetValues<Modulation>()];

    [Theory]
    [MemberData(nameof(NoiseRows))]
    public void Noise_and_required_sinr_give_every_printed_sensitivity(int row)
    {
        var receiver = new Receiver(RadioSamples.OQpsk with
        {
            NoiseBandwidthKilohertz = Noise.Number(row, "noise_bandwidth_Hz") / 1e3,
            NoiseFigure = new(Noise.Number(row, "noise_figure_dB")),
            Sensitivity = RadioSamples.NoiseDecides,
        });

        Noise.ShouldPrint(row, "kTB_dBm_290K", ThermalNoise.Floor(Noise.Number(row, "noise_bandwidth_Hz") / 1e3, Decibels.Zero).Dbm);
        Noise.ShouldPrint(row, "noise_floor_dBm", receiver.NoiseFloor.Dbm);
        Noise.ShouldPrint(row, "sensitivity_dBm_PER1pct_20octets", receiver.RequiredLevel.Dbm);
    }

    [Theory]
    [MemberData(nameof(SubGhzRows))]
    public void Sub_ghz_rates_give_every_printed_sensitivity(int row)
    {
        RadioProfile radio = RadioSamples.Of(
            Modulation.Fsk, SubGhz.Number(row, "bit_rate") / 1e3, SubGhz.Number(row, "carson_bandwidth_Hz") / 1e3, overheadOctets: 11);
        var receiver = new Receiver(radio with
        {
            NoiseFigure = new(SubGhz.Number(row, "noise_figure_dB")),
            Sensitivity = RadioSamples.NoiseDecides,
        });

        SubGhz.ShouldPrint(row, "required_SNR_dB_in_carson_bw", receiver.RequiredSinr.Value);
        SubGhz.ShouldPrint(row, "noise_floor_dBm_in_carson_bw", receiver.NoiseFloor.Dbm);
        SubGhz.ShouldPrint(row, "sensitivity_dBm_FER1pct_20B", receiver.RequiredLevel.Dbm);
    }

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
}
