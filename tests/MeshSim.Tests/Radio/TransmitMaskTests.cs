using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class TransmitMaskTests
{
    /// <summary>A share is a difference of two integrals from the centre, each half of a whole of one at most.</summary>
    private const double DifferenceOfIntegrals = 0.5;

    private static readonly TransmitMask EdgeAt45 = new((9, 0), (11, -20), (20, -28), (30, -45));

    public static readonly ReproducedTable Fractions = new("Radio/wifi-fractions.csv", 64, ["wifi_channel", "ch_802154"], CompareFractions);

    public static readonly ReproducedTable Integrals = new("Radio/wifi-mask-integrals.csv", 8, ["quantity"], CompareIntegrals);

    public static TheoryData<int> FractionPlaces => Fractions.Places;

    public static TheoryData<int> IntegralPlaces => Integrals.Places;

    [Theory]
    [MemberData(nameof(FractionPlaces))]
    public void Every_printed_share_and_level_is_met(int place) => Fractions.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(IntegralPlaces))]
    public void The_whole_of_the_mask_and_its_middle_are_met(int place) => Integrals.ShouldBeMetAt(place);

    [Fact]
    public void The_closed_form_is_what_fine_steps_sum_to()
    {
        // The middle rule on steps of 1/1000 MHz: its error is a 24th of the square of (10 dB per MHz · step), some 2e-7 of the sum.
        const double MiddleRule = 1e-6;
        foreach (TransmitMask mask in new[] { TransmitMask.Ofdm20, TransmitMask.Ofdm40 })
        {
            double sum = Enumerable.Range(0, 30_000).Sum(i => mask.LevelAt(-5 + ((i + 0.5) / 1000)).PowerRatio) / 1000;
            (mask.Share(-5, 25) * mask.EquivalentMegahertz).Should().BeApproximately(sum, MiddleRule * sum);
        }
    }

    [Fact]
    public void Corners_that_do_not_lead_outwards_and_other_widths_are_refused()
    {
        FluentActions.Invoking(() => new TransmitMask((9, 0), (9, -20))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => TransmitMask.OfWidth(80)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*20 or 40 MHz*");
    }

    private static IEnumerable<Comparison> CompareFractions(PublishedRow row)
    {
        double offset = row.Number("offset_MHz");
        yield return row.Printed("fraction_mask40", TransmitMask.Ofdm20.Share(offset - 1, offset + 1), scale: DifferenceOfIntegrals);
        yield return row.Printed("fraction_mask45", EdgeAt45.Share(offset - 1, offset + 1), scale: DifferenceOfIntegrals);
        yield return row.Printed("mask_dBr_at_centre", TransmitMask.Ofdm20.LevelAt(offset).Value);
    }

    private static IEnumerable<Comparison> CompareIntegrals(PublishedRow row)
    {
        double? ours = row["quantity"] switch
        {
            "total_area_equiv_MHz_0dBr" => TransmitMask.Ofdm20.EquivalentMegahertz,
            "fraction_inside_+-9MHz" => TransmitMask.Ofdm20.Share(-9, 9),
            "fraction_inside_+-10MHz" => TransmitMask.Ofdm20.Share(-10, 10),
            "fraction_inside_+-11MHz" => TransmitMask.Ofdm20.Share(-11, 11),
            _ => null, // Flat bands of other widths, for comparison with the mask.
        };
        if (ours is { } value) yield return row.Printed("value", value);
    }
}
