using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class AirtimeTests
{
    public static readonly ReproducedTable G9959 = new("Radio/g9959-airtime.csv", 45, ["rate", "payload_bytes"], CompareG9959);

    public static readonly ReproducedTable SubGhz = new("Radio/sub-ghz-airtime.csv", 20, ["phy", "psdu_bytes"], CompareSubGhz);

    public static TheoryData<int> G9959Places => G9959.Places;

    public static TheoryData<int> SubGhzPlaces => SubGhz.Places;

    [Theory]
    [MemberData(nameof(G9959Places))]
    public void G9959_gives_every_printed_airtime_and_frame_count(int place) => G9959.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(SubGhzPlaces))]
    public void Sub_ghz_802154_gives_every_printed_airtime(int place) => SubGhz.ShouldBeMetAt(place);

    [Theory]
    [InlineData(20, 0.832)]
    [InlineData(50, 1.792)]
    [InlineData(127, 4.256)]
    public void At_2450_megahertz_an_octet_takes_32_microseconds_after_6_octets(int octets, double milliseconds) =>
        Airtime.Milliseconds(RadioSamples.OQpsk, octets).Should().BeApproximately(milliseconds, 1e-12, "one division is exact to the last bit");

    [Fact]
    public void A_duty_cycle_above_one_is_refused() =>
        FluentActions.Invoking(() => Airtime.FramesPerHour(RadioSamples.OQpsk, 50, 1.5)).Should().Throw<ArgumentOutOfRangeException>();

    private static IEnumerable<Comparison> CompareG9959(PublishedRow row)
    {
        int overheadOctets = row.Whole("preamble_bytes") + row.Whole("sof_bytes"), octets = row.Whole("mpdu_bytes");
        RadioProfile radio = RadioSamples.Of(Modulation.Fsk, row.Number("bit_rate") / 1e3, 80, overheadOctets);
        yield return row.Within("airtime_ms", Airtime.Milliseconds(radio, octets));
        yield return row.Exactly("max_frames_per_hour_1pct_duty", Airtime.FramesPerHour(radio, octets, 0.01));
        yield return row.Exactly("max_frames_per_hour_0p1pct_duty", Airtime.FramesPerHour(radio, octets, 0.001));
    }

    private static IEnumerable<Comparison> CompareSubGhz(PublishedRow row)
    {
        (double bitRateKilobitsPerSecond, int overheadOctets) = row["phy"] switch
        {
            "BPSK 868.3 MHz 20 kb/s" => (20, 6),
            "BPSK 915 MHz 40 kb/s" => (40, 6),
            "SUN FSK 50 kb/s (preamble 4, SFD 2, PHR 2 octets)" => (50, 8),
            "SUN FSK 100 kb/s (preamble 4, SFD 2, PHR 2 octets)" => (100, 8),
            string other => throw new InvalidDataException(other),
        };
        RadioProfile radio = RadioSamples.Of(Modulation.Fsk, bitRateKilobitsPerSecond, 200, overheadOctets);
        yield return row.Within("airtime_ms", Airtime.Milliseconds(radio, row.Whole("psdu_bytes")));
    }
}
