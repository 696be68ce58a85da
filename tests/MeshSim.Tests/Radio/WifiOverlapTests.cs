using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class WifiOverlapTests
{
    /// <summary>The printed shares in decibels are -9.8 to -49.8; a share of 1e-5 is a difference of two halves rounded to 1e-16.</summary>
    private const double RoundingDb = 1e-9;

    public static readonly ReproducedTable Centres = new(
        "Radio/wifi-channels.csv", 14, ["channel"], row => [row.Exactly("centre_MHz", WifiOverlap.Centre(row.Whole("channel"), 20).Megahertz)]);

    public static readonly ReproducedTable Shares = new("Radio/wifi-fractions.csv", 64, ["wifi_channel", "ch_802154"], CompareShares);

    public static TheoryData<int> CentrePlaces => Centres.Places;

    public static TheoryData<int> SharePlaces => Shares.Places;

    [Theory]
    [MemberData(nameof(CentrePlaces))]
    public void Every_channel_has_its_printed_centre(int place) => Centres.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(SharePlaces))]
    public void A_perfect_filter_takes_in_the_printed_share(int place) => Shares.ShouldBeMetAt(place);

    [Fact]
    public void Channels_15_20_25_and_26_lie_between_wifi_1_6_and_11()
    {
        // Within the mask's flat top an access point puts a tenth of its power into the channel; beside it a thousandth at most.
        int[] clear = [.. Enumerable.Range(11, 16).Where(channel => new[] { 1, 6, 11 }.All(wifi =>
            WifiOverlap.Share(wifi, 20, RadioSamples.OQpsk, RadioSamples.OQpsk.Carrier(channel)) < 1e-3))];
        clear.Should().Equal(15, 20, 25, 26);
    }

    [Fact]
    public void What_a_receiver_does_not_reject_comes_on_top()
    {
        RadioProfile leaky = RadioSamples.OQpsk with { AdjacentRejection = new(20), AlternateRejection = new(30) };
        double perfect = WifiOverlap.Share(1, 20, RadioSamples.OQpsk, leaky.Carrier(26));
        WifiOverlap.Share(1, 20, leaky, leaky.Carrier(26)).Should().BeInRange(perfect + 0.99e-3, perfect + 1.01e-3, "all of it lies beyond, 30 dB down");
        WifiOverlap.Share(6, 20, leaky, leaky.Carrier(17)).Should().BeGreaterThan(WifiOverlap.Share(6, 20, RadioSamples.OQpsk, leaky.Carrier(17)));
    }

    [Fact]
    public void A_wide_channel_spreads_over_the_second_half_on_its_side()
    {
        WifiOverlap.Centre(1, 40).Megahertz.Should().Be(2422);
        WifiOverlap.Centre(11, 40).Megahertz.Should().Be(2452);
        WifiOverlap.Share(1, 40, RadioSamples.OQpsk, new(2435)).Should().BeGreaterThan(WifiOverlap.Share(1, 20, RadioSamples.OQpsk, new(2435)));
    }

    [Fact]
    public void Other_bands_hear_nothing_and_other_channels_are_refused()
    {
        WifiOverlap.Share(6, 20, RadioSamples.OQpsk, new(868.4)).Should().Be(0);
        FluentActions.Invoking(() => WifiOverlap.Centre(15, 20)).Should().Throw<ArgumentOutOfRangeException>();
    }

    private static IEnumerable<Comparison> CompareShares(PublishedRow row)
    {
        Frequency carrier = RadioSamples.OQpsk.Carrier(row.Whole("ch_802154"));
        double share = WifiOverlap.Share(row.Whole("wifi_channel"), 20, RadioSamples.OQpsk, carrier);
        yield return row.Near("fraction_mask40_dB", Decibels.FromPowerRatio(share).Value, RoundingDb, "dB");
    }
}
