using CsCheck;
using MathNet.Numerics;
using MathNet.Numerics.Integration;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class BitErrorRateTests
{
    /// <summary>The Rice density by quadrature is good to about this share.</summary>
    private const double QuadratureShare = 1e-9;

    /// <summary>What the steps of the search for the best threshold may miss.</summary>
    private const double SearchShare = 1e-3;

    /// <summary>What the textbook's approximate threshold may cost against the best one; the price that the documentation states.</summary>
    private static readonly Decibels ThresholdCost = new(0.1);

    public static readonly ReproducedTable OQpskTable = new("Radio/ieee802154-2450-error-rates.csv", 21, ["SINR_dB"], CompareOQpsk);

    public static readonly ReproducedTable FskTable = new("Radio/fsk-psk-error-rates.csv", 33, ["Eb_N0_dB"], CompareFsk);

    public static TheoryData<int> OQpskPlaces => OQpskTable.Places;

    public static TheoryData<int> FskPlaces => FskTable.Places;

    public static TheoryData<Modulation> Modulations => [.. Enum.GetValues<Modulation>()];

    [Theory]
    [MemberData(nameof(OQpskPlaces))]
    public void OQpsk_gives_every_printed_bit_error_rate(int place) => OQpskTable.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(FskPlaces))]
    public void Fsk_and_psk_give_every_printed_bit_error_rate(int place) => FskTable.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(Modulations))]
    public void Without_signal_half_of_the_bits_are_wrong(Modulation modulation) =>
        BitErrorRate.Of(modulation, 0).Should().BeApproximately(0.5, PrintedDigits.SearchShare);

    [Theory]
    [MemberData(nameof(Modulations))]
    public void A_stronger_signal_is_never_worse(Modulation modulation) =>
        Gen.Select(Gen.Double[-30, 25], Gen.Double[0, 5]).Sample((ratioDb, stepDb) =>
            BitErrorRate.Of(modulation, new Decibels(ratioDb + stepDb).PowerRatio)
            <= BitErrorRate.Of(modulation, new Decibels(ratioDb).PowerRatio) * (1 + PrintedDigits.SearchShare));

    [Theory]
    [InlineData(3)]
    [InlineData(8)]
    [InlineData(12)]
    public void On_off_is_the_mean_of_false_alarm_and_miss_by_integration(double ratioDb)
    {
        double amplitude = 2 * Math.Sqrt(new Decibels(ratioDb).PowerRatio), threshold = Math.Sqrt(2 + (amplitude * amplitude / 4));
        double expected = OnOffAtThreshold(amplitude, threshold);
        BitErrorRate.OnOff(new Decibels(ratioDb).PowerRatio).Should().BeApproximately(expected, QuadratureShare * expected);
    }

    [Theory]
    [InlineData(6)]
    [InlineData(9)]
    [InlineData(12)]
    [InlineData(15)]
    public void On_off_by_the_approximate_threshold_is_close_to_the_best_threshold(double ratioDb)
    {
        double ours = BitErrorRate.OnOff(new Decibels(ratioDb).PowerRatio);
        ours.Should().BeGreaterThanOrEqualTo(OnOffAtBestThreshold(new(ratioDb)) * (1 - SearchShare), "no threshold beats the best");
        ours.Should().BeLessThan(OnOffAtBestThreshold(new Decibels(ratioDb) - ThresholdCost));
    }

    [Theory]
    [MemberData(nameof(Modulations))]
    public void A_ratio_that_is_negative_or_no_number_is_refused(Modulation modulation)
    {
        FluentActions.Invoking(() => BitErrorRate.Of(modulation, -0.1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => BitErrorRate.Of(modulation, double.NaN)).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void An_unknown_modulation_is_refused() =>
        FluentActions.Invoking(() => BitErrorRate.Of((Modulation)99, 1)).Should().Throw<ArgumentOutOfRangeException>();

    /// <summary>The best lies between half and all of the amplitude; steps of 0.5 % miss its flat minimum by less than one part in a thousand.</summary>
    private static double OnOffAtBestThreshold(Decibels ratio)
    {
        double amplitude = 2 * Math.Sqrt(ratio.PowerRatio);
        return Enumerable.Range(100, 101).Min(i => OnOffAtThreshold(amplitude, amplitude * i / 200));
    }

    /// <summary>Error rate of envelope detection: Rayleigh density above the threshold, Rice density below it.</summary>
    private static double OnOffAtThreshold(double amplitude, double threshold)
    {
        double miss = GaussLegendreRule.Integrate(
            r => r * Math.Exp(-(r - amplitude) * (r - amplitude) / 2) * SpecialFunctions.BesselIScaled(0, r * amplitude), 0, threshold, 256);
        return (Math.Exp(-threshold * threshold / 2) + miss) / 2;
    }

    private static IEnumerable<Comparison> CompareOQpsk(PublishedRow row)
    {
        double sinr = new Decibels(row.Number("SINR_dB")).PowerRatio;
        yield return row.Within("BER", BitErrorRate.OQpsk(sinr));
        yield return row.Within("SINR_linear", sinr);
    }

    private static IEnumerable<Comparison> CompareFsk(PublishedRow row)
    {
        double ratio = new Decibels(row.Number("Eb_N0_dB")).PowerRatio;
        yield return row.Within("BER_noncoherent_2FSK", BitErrorRate.NoncoherentFsk(ratio));
        yield return row.Within("Eb_N0_linear", ratio);
        yield return row.Within("BER_DBPSK", BitErrorRate.DifferentialBpsk(ratio));

        // Coherent detection is the tail of the normal distribution, which the other rates do not use.
        yield return row.Within("BER_coherent_2FSK", NormalDistribution.Tail(Math.Sqrt(ratio)));
        yield return row.Within("BER_BPSK", NormalDistribution.Tail(Math.Sqrt(2 * ratio)));
    }
}
