using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class AirtimeTests
{
    private static readonly ReferenceTable G9959 = ReferenceTable.Read("Radio/g9959-airtime.csv");
    private static readonly ReferenceTable SubGhz = ReferenceTable.Read("Radio/sub-ghz-airtime.csv");

    public static TheoryData<int> G9959Rows => G9959.Rows(45);

    public static TheoryData<int> SubGhzRows => SubGhz.Rows(20);

    [Theory]
    [MemberData(nameof(G9959Rows))]
    public void G9959_gives_every_printed_airtime_and_frame_count(int row)
    {
        int overheadOctets = G9959.Whole(row, "preamble_bytes") + G9959.Whole(row, "sof_bytes");
        RadioProfile radio = RadioSamples.Of(Modulation.Fsk, G9959.Number(row, "bit_rate") / 1e3, 80, overheadOctets);
        int octets = G9959.Whole(row, "mpdu_bytes");

        G9959.ShouldPrint(row, "airtime_ms", Airtime.Milliseconds(radio, octets));
        Airtime.FramesPerHour(radio, octets, 0.01).Should().Be(G9959.Whole(row, "max_frames_per_hour_1pct_duty"));
        Airtime.FramesPerHour(radio, octets, 0.001).Should().Be(G9959.Whole(row, "max_frames_per_hour_0p1pct_duty"));
    }

    [Theory]
    [MemberData(nameof(SubGhzRows))]
    public void Sub_ghz_802154_gives_every_printed_airtime(int row)
    {
        (double bitRateKilobitsPerSecond, int overheadOctets) = SubGhz.Text(row, "phy") switch
        {
            "BPSK 868.3 MHz 20 kb/s" => (20, 6),
            "BPSK 915 MHz 40 kb/s" => (40, 6),
            "SUN FSK 50 kb/s (preamble 4, SFD 2, PHR 2 octets)" => (50, 8),
            "SUN FSK 100 kb/s (preamble 4, SFD 2, PHR 2 octets)" => (100, 8),
            string other => throw new InvalidDataException(other),
        };
        RadioProfile radio = RadioSamples.Of(Modulation.Fsk, bitRateKilobitsPerSecond, 200, overheadOctets);
        SubGhz.ShouldPrint(row, "airtime_ms", Airtime.Milliseconds(radio, SubGhz.Whole(row, "psdu_bytes")));
    }

    [Theory]
    [InlineData(20, 0.832)]
    [InlineData(50, 1.792)]
    [InlineData(127, 4.256)]
    public void At_2450_megahertz_an_octet_takes_32_microseconds_after_6_octets(int octets, double milliseconds) =>
        Airtime.Milliseconds(RadioSamples.OQpsk, octets).Should().BeApproximately(milliseconds, 1e-12, "one division is exact to the last bit");

    [Fact]
    public void A_duty_cycle_above_one_is_refused() =>
        FluentActions.Invoking(() => Airtime.FramesPerHour(RadioSamples.OQpsk, 50, 1.5)).Should().Throw<ArgumentOutOfRangeException>();
}
