using MeshSim.Files;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class HopTimeTests
{
    /// <summary>1e-10 of probability is dropped at each end, of times up to some 100 ms.</summary>
    private const double DroppedMilliseconds = 1e-6;

    /// <summary>The same in microseconds, and kilobits per second over them: 163 kb/s times 1e-3 µs in 1664 µs at most.</summary>
    private const double DroppedMicroseconds = 1e-3, DroppedKilobits = 1e-4;

    private static readonly RadioProfile Radio2450 = Radio("ieee802154-2450");

    public static readonly ReproducedTable Throughput = new(
        "Radio/unslotted-csma-throughput.csv", 182, ["addressing", "payload_bytes", "acked"], CompareThroughput);

    public static readonly ReproducedTable Constants = new("Radio/ieee802154-2450-constants.csv", 33, ["name", "unit"], CompareConstant);

    public static readonly ReproducedTable AcknowledgementWait = new("Radio/g9959-ack-wait.csv", 4, ["rate"], CompareWait);

    public static TheoryData<int> ThroughputPlaces => Throughput.Places;

    public static TheoryData<int> ConstantPlaces => Constants.Places;

    public static TheoryData<int> WaitPlaces => AcknowledgementWait.Places;

    [Theory]
    [MemberData(nameof(ThroughputPlaces))]
    public void One_hop_takes_as_long_as_in_latre_et_al(int place) => Throughput.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(ConstantPlaces))]
    public void The_catalogue_has_the_constants_of_the_standard(int place) => Constants.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(WaitPlaces))]
    public void The_sub_ghz_mesh_waits_as_printed(int place) => AcknowledgementWait.ShouldBeMetAt(place);

    [Fact]
    public void The_greatest_throughput_is_the_published_one()
    {
        double best = Throughput.Rows.Max(row => Throughput.Compare(row).Single(value => value.Column == "throughput_kbps_latre_form").Ours);
        best.Should().BeLessThan(163, "the paper says not higher than 163 kb/s");
        (best / 250).Should().BeApproximately(0.649, 0.0005, "the paper prints 64.9 %");
    }

    [Fact]
    public void A_sender_waits_54_symbols_for_an_acknowledgement_of_22()
    {
        // Sums of three decimal fractions of a millisecond.
        HopTime.PatienceMilliseconds(Radio2450).Should().BeApproximately(0.864, 1e-12);
        (HopTime.AnswerMilliseconds(Radio2450) - 0.192).Should().BeApproximately(0.352, 1e-12);
    }

    [Fact]
    public void A_lost_attempt_costs_back_off_frame_and_the_wait_for_its_acknowledgement()
    {
        var times = new HopTime(Radio2450, 0);
        double first = times.Of([1]).Time!.MeanMilliseconds, second = times.Of([0, 1]).Time!.MeanMilliseconds;
        double frame = Airtime.Milliseconds(Radio2450, Radio2450.FrameOctets);
        first.Should().BeApproximately(1.12 + 0.128 + 0.192 + frame + 0.192 + 0.352, DroppedMilliseconds);
        (second - first).Should().BeApproximately(1.12 + 0.128 + 0.192 + frame + 0.864, DroppedMilliseconds);
        times.Of([0.5, 0.25]).Time!.MeanMilliseconds.Should().BeApproximately(((2 * first) + second) / 3, DroppedMilliseconds);
    }

    [Fact]
    public void What_arrives_is_what_finds_the_channel_free_in_time()
    {
        // Each look finds it busy half of the time: five in a row in one of 32 attempts, four such attempts in one of a million.
        (double arriving, TimeDistribution? time) = new HopTime(Radio2450, 0.5).Of([1]);
        arriving.Should().BeApproximately(1 - Math.Pow(2, -20), 1e-12, "a sum of four powers");
        time!.MeanMilliseconds.Should().BeGreaterThan(new HopTime(Radio2450, 0).Of([1]).Time!.MeanMilliseconds);
        new HopTime(Radio2450, 1).Of([1]).Should().Be((0, null));
    }

    private static RadioProfile Radio(string name) => Catalogues.Radios.First(radio => radio.Name == name);

    private static IEnumerable<Comparison> CompareThroughput(PublishedRow row)
    {
        MediumAccess access = Radio2450.Access;
        RadioProfile radio = Radio2450 with
        {
            FrameOctets = row.Whole("psdu_bytes"),
            Access = row.Flag("acked") ? access : access with { AcknowledgementOctets = 0 },
        };

        // Their form leaves out the look and the turnaround before sending; the last column has them.
        double whole = (1e3 * new HopTime(radio, 0).Of([1]).Time!.MeanMilliseconds) + row.Number("ifs_us");
        double theirs = whole - access.LookMicroseconds - access.TurnaroundMicroseconds, bits = 8e3 * row.Number("payload_bytes");
        yield return row.Near("throughput_kbps_latre_form", bits / theirs, DroppedKilobits, "kb/s");
        yield return row.Near("cycle_us", theirs, DroppedMicroseconds, "us");
        yield return row.Near("throughput_kbps_with_CCA128us_and_turnaround192us", bits / whole, DroppedKilobits, "kb/s");
    }

    /// <summary>Those constants that a profile holds.</summary>
    private static IEnumerable<Comparison> CompareConstant(PublishedRow row)
    {
        MediumAccess access = Radio2450.Access;
        double? ours = (row["name"], row["unit"]) switch
        {
            ("bit_rate", _) => Radio2450.BitRateKilobitsPerSecond * 1e3,
            ("unit_backoff", _) => access.BackOffUnitMicroseconds,
            ("turnaround", _) => access.TurnaroundMicroseconds,
            ("CCA", _) => access.LookMicroseconds,
            ("macMinBE", _) => Math.Log2(access.BackOffUnits),
            ("macMaxBE (2006 on)", _) => Math.Log2(access.MostBackOffUnits),
            ("macMaxCSMABackoffs", _) => access.Looks - 1,
            ("macMaxFrameRetries", _) => access.Retries,
            ("max attempts per frame", _) => access.Attempts,
            ("ACK PSDU", _) => access.AcknowledgementOctets,
            ("ACK airtime", _) => 1e3 * Airtime.Milliseconds(Radio2450, access.AcknowledgementOctets),
            ("macAckWaitDuration", "us") => 1e3 * HopTime.PatienceMilliseconds(Radio2450),
            ("airtime PSDU 127", _) => 1e3 * Airtime.Milliseconds(Radio2450, 127),
            ("airtime PSDU 20", _) => 1e3 * Airtime.Milliseconds(Radio2450, 20),
            _ => null,
        };
        if (ours is { } value) yield return row.Printed("value", value);
    }

    private static IEnumerable<Comparison> CompareWait(PublishedRow row)
    {
        RadioProfile radio = row["rate"] switch
        {
            "R1" => Radio("g9959-eu-9k6"),
            "R2" => Radio("g9959-eu-40k"),
            "R3_cfg12" => Radio("g9959-eu-100k"),
            _ => ThreeChannels(Radio("g9959-eu-100k")),
        };
        yield return row.Printed("aMacMinAckWaitDuration_ms", HopTime.PatienceMilliseconds(radio));
        yield return row.Printed("ack_airtime_ms", Airtime.Milliseconds(radio, radio.Access.AcknowledgementOctets));
    }

    /// <summary>Regions of three channels have a shorter preamble and one octet more in each frame.</summary>
    private static RadioProfile ThreeChannels(RadioProfile radio) =>
        radio with { OverheadOctets = 25, Access = radio.Access with { AcknowledgementOctets = 12 } };
}
