using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class PacketErrorRateTests
{
    private static readonly ReferenceTable OQpskTable = ReferenceTable.Read("Radio/ieee802154-2450-error-rates.csv");
    private static readonly ReferenceTable FskTable = ReferenceTable.Read("Radio/fsk-psk-error-rates.csv");
    private static readonly ReferenceTable OQpskRequired = ReferenceTable.Read("Radio/ieee802154-2450-required-sinr.csv");
    private static readonly ReferenceTable FskRequired = ReferenceTable.Read("Radio/fsk-required-ratio.csv");

    public static TheoryData<int> OQpskRows => OQpskTable.Rows(21);

    public static TheoryData<int> FskRows => FskTable.Rows(33);

    public static TheoryData<int> OQpskRequiredRows => OQpskRequired.Rows(15);

    public static TheoryData<int> FskRequiredRows => FskRequired.Rows(8);

    [Theory]
    [MemberData(nameof(OQpskRows))]
    public void OQpsk_gives_every_printed_packet_error_rate(int row)
    {
        double ber = BitErrorRate.OQpsk(new Decibels(OQpskTable.Number(row, "SINR_dB")).PowerRatio);
        foreach (string octets in new[] { "20", "50", "127" })
        {
            OQpskTable.ShouldPrint(row, "PER_psdu" + octets, PacketErrorRate.Of(ber, int.Parse(octets)));
            OQpskTable.ShouldPrint(row, "PER_psdu" + octets + "_plus6hdr", PacketErrorRate.Of(ber, int.Parse(octets) + 6));
        }
    }

    [Theory]
    [MemberData(nameof(FskRows))]
    public void Fsk_gives_every_printed_frame_error_rate(int row)
    {
        double ber = BitErrorRate.NoncoherentFsk(new Decibels(FskTable.Number(row, "Eb_N0_dB")).PowerRatio);
        foreach (string octets in new[] { "10", "64", "170" })
            FskTable.ShouldPrint(row, "FER_ncFSK_" + octets + "B", PacketErrorRate.Of(ber, int.Parse(octets)));
    }

    [Theory]
    [MemberData(nameof(OQpskRequiredRows))]
    public void OQpsk_needs_every_printed_sinr(int row)
    {
        Decibels required = PacketErrorRate.RequiredRatio(
            Modulation.OQpsk, OQpskRequired.Whole(row, "psdu_bytes"), OQpskRequired.Number(row, "target_PER"));
        OQpskRequired.ShouldPrint(row, "required_SINR_dB", required.Value);
    }

    [Theory]
    [MemberData(nameof(FskRequiredRows))]
    public void Fsk_needs_every_printed_ratio(int row)
    {
        int octets = FskRequired.Whole(row, "frame_bytes");
        double target = FskRequired.Number(row, "target_FER");
        FskRequired.ShouldPrint(row, "BER", PacketErrorRate.BitErrorRateFor(target, octets));
        FskRequired.ShouldPrint(row, "required_Eb_N0_dB_noncoherent", PacketErrorRate.RequiredRatio(Modulation.Fsk, octets, target).Value);
    }

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
}
