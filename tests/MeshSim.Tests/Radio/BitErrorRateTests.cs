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

    private static readonly ReferenceTable OQpskTable = ReferenceTable.Read("Radio/ieee802154-2450-error-rates.csv");
    private static readonly ReferenceTable FskTable = ReferenceTable.Read("Radio/fsk-psk-error-rates.csv");

    public static TheoryData<int> OQpskRows => OQpskTable.Rows(21);

    public static TheoryData<int> FskRows => FskTable.Rows(33);

    public static TheoryData<Modulation> Modulations => [.. Enum.GetValues<Modulation>()];

    [Theory]
    [MemberData(nameof(OQpskRows))]
    public void OQpsk_gives_every_printed_bit_error_rate(int row)
    {
        double sinr = new Decibels(OQpskTable.Number(row, "SINR_dB")).PowerRatio;
        OQpskTable.ShouldPrint(row, "SINR_linear", sinr);
        OQpskTable.ShouldPrint(row, "BER", BitErrorRate.OQpsk(sinr));
    }

    [Theory]
    [MemberData(nameof(FskRows))]
    public void Fsk_and_psk_give_every_printed_bit_error_rate(int row)
    {
        double ratio = new Decibels(FskTable.Number(row, "Eb_N0_dB")).PowerRatio;
        FskTable.ShouldPrint(row, "Eb_N0_linear", ratio);
        FskTable.ShouldPrint(row, "BER_noncoherent_2FSK", BitErrorRate.NoncoherentFsk(ratio));
        FskTable.ShouldPrint(row, "BER_DBPSK", BitErrorRate.DifferentialBpsk(ratio));
    }

    [Theory]
    [MemberData(nameof(FskRows))]
    public void The_normal_tail_gives_every_printed_coherent_bit_error_rate(int row)
    {
        double ratio = new Decibels(FskTable.Number(row, "Eb_N0_dB")).PowerRatio;
        FskTable.ShouldPrint(row, "BER_coherent_2FSK", NormalDistribution.Tail(Math.Sqrt(ratio)));
        FskTable.ShouldPrint(row, "BER_BPSK", NormalDistribution.Tail(Math.Sqrt(2 * ratio)));
    }

    [Theory]
    [MemberData(nameof(Modulations))]
    public void Without_signal_half_of_the_bits_are_wrong(Modulation modulation) =>
        BitErrorRate.Of(modulation, 0).Should().BeApproximately(0.5, ReferenceTable.PrintedDigits);

    [Theory]
    [MemberData(nameof(Modulations))]
    public void A_stronger_signal_is_never_worse(Modulation modulation) =>
        Gen.Select(Gen.Double[-30, 25], Gen.Double[0, 5]).Sample((ratioDb, stepDb) =>
            BitErrorRate.Of(modulation, new Decibels(ratioDb + stepDb).PowerRatio)
            <= BitErrorRate.Of(modulation, new Decibels(ratioDb).PowerRatio) * (1 + ReferenceTable.PrintedDigits));

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
}
