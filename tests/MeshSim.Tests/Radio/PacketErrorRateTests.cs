using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class PacketErrorRateTests
{
    public static readonly ReproducedTable OQpsk = new("Radio/ieee802154-2450-error-rates.csv", 21, ["SINR_dB"], CompareOQpsk);

    public static readonly ReproducedTable Fsk = new("Radio/fsk-psk-error-rates.csv", 33, ["Eb_N0_dB"], CompareFsk);

    public static readonly ReproducedTable OQpskRequired = new("Radio/ieee802154-2450-required-sinr.csv", 15, ["psdu_bytes", "target_PER"], CompareOQpskRequired);

    public static readonly ReproducedTable FskRequired = new("Radio/fsk-required-ratio.csv", 8, ["frame_bytes", "target_FER"], CompareFskRequired);

    public static TheoryData<int> OQpskPlaces => OQpsk.Places;

    public static TheoryData<int> FskPlaces => Fsk.Places;

    public static TheoryData<int> OQpskRequiredPlaces => OQpskRequired.Places;

    public static TheoryData<int> FskRequiredPlaces => FskRequired.Places;

    [Theory]
    [MemberData(nameof(OQpskPlaces))]
    public void OQpsk_gives_every_printed_packet_error_rate(int place) => OQpsk.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(FskPlaces))]
    public void Fsk_gives_every_printed_frame_error_rate(int place) => Fsk.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(OQpskRequiredPlaces))]
    public void OQpsk_needs_every_printed_sinr(int place) => OQpskRequired.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(FskRequiredPlaces))]
    public void Fsk_needs_every_printed_ratio(int place) => FskRequired.ShouldBeMetAt(place);

    [Theory]
    [InlineData(Modulation.Bpsk, 20, 0.01)]
    [InlineData(Modulation.OnOff, 8, 0.01)]
    [InlineData(Modulation.OnOff, 1, 0.9)]
    [InlineData(Modulation.OQpsk, 2047, 1e-9)]
    public void The_required_ratio_loses_the_wanted_share(Modulation modulation, int octets, double target)
    {
        double ratio = PacketErrorRate.RequiredRatio(modulation, octets, target).PowerRatio;
        PacketErrorRate.Of(BitErrorRate.Of(modulation, ratio), octets).Should().BeApproximately(target, target * 1e-9, "a root to 1e-13 dB moves it less");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2048)]
    public void A_frame_of_impossible_length_is_refused(int octets) =>
        FluentActions.Invoking(() => PacketErrorRate.Of(0.1, octets)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*1 to 2047 octets*");

    [Theory]
    [InlineData(0)]
    [InlineData(0.95)]
    [InlineData(double.NaN)]
    public void An_impossible_target_is_refused(double target) =>
        FluentActions.Invoking(() => PacketErrorRate.RequiredRatio(Modulation.Fsk, 20, target)).Should().Throw<ArgumentOutOfRangeException>();

    private static IEnumerable<Comparison> CompareOQpsk(PublishedRow row)
    {
        double ber = BitErrorRate.OQpsk(new Decibels(row.Number("SINR_dB")).PowerRatio);
        foreach (string octets in new[] { "20", "50", "127" })
        {
            yield return row.Within("PER_psdu" + octets, PacketErrorRate.Of(ber, int.Parse(octets)));
            yield return row.Within("PER_psdu" + octets + "_plus6hdr", PacketErrorRate.Of(ber, int.Parse(octets) + 6));
        }
    }

    private static IEnumerable<Comparison> CompareFsk(PublishedRow row)
    {
        double ber = BitErrorRate.NoncoherentFsk(new Decibels(row.Number("Eb_N0_dB")).PowerRatio);
        foreach (string octets in new[] { "10", "64", "170" })
            yield return row.Within("FER_ncFSK_" + octets + "B", PacketErrorRate.Of(ber, int.Parse(octets)));
    }

    private static IEnumerable<Comparison> CompareOQpskRequired(PublishedRow row)
    {
        Decibels required = PacketErrorRate.RequiredRatio(Modulation.OQpsk, row.Whole("psdu_bytes"), row.Number("target_PER"));
        yield return row.Within("required_SINR_dB", required.Value);
    }

    private static IEnumerable<Comparison> CompareFskRequired(PublishedRow row)
    {
        int octets = row.Whole("frame_bytes");
        double target = row.Number("target_FER");
        yield return row.Within("required_Eb_N0_dB_noncoherent", PacketErrorRate.RequiredRatio(Modulation.Fsk, octets, target).Value);
        yield return row.Within("BER", PacketErrorRate.BitErrorRateFor(target, octets));
    }
}
