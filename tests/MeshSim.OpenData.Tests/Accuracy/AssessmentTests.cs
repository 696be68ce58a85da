using MeshSim.OpenData.Tests.Accuracy.Regression;
using MeshSim.OpenData.Tests.Accuracy.Sets;

namespace MeshSim.OpenData.Tests.Accuracy;

/// <summary>How near the models must come to what was measured.</summary>
public sealed class AssessmentTests
{
    /// <summary>Where there are no walls no model may do worse than a fit of distance: a tenth for rounding of what was published.</summary>
    private const double HallToleranceDb = 0.1;

    /// <summary>A two-digit figure of the publisher's data, found again by a regression of our own.</summary>
    private const double PublishedDigitDb = 0.006;

    [Fact]
    public void In_the_flat_a_receiver_left_out_is_met_within_4_2_dB() =>
        AccuracySets.Flat.LeftOutFigures(WallForm.Detour).RmseDb.Should().BeLessThanOrEqualTo(4.2);

    [Fact]
    public void In_the_flat_the_catalogue_without_a_fit_is_within_5_dB() =>
        AccuracySets.Flat.Catalogue(WallForm.Detour).RmseDb.Should().BeLessThanOrEqualTo(5);

    [Fact]
    public void In_the_office_test_points_are_met_within_7_dB_once_each_transmitter_has_its_offset() =>
        AccuracySets.Office.SetApart(WallForm.Detour, withOffsets: true).RmseDb.Should().BeLessThanOrEqualTo(7);

    [Fact]
    public void A_way_round_lowers_the_error_of_transmitters_left_out_in_both_buildings_with_walls()
    {
        foreach (Assessment building in new[] { AccuracySets.Flat, AccuracySets.Office })
        {
            building.LeftOutFigures(WallForm.Detour).RmseDb.Should().BeLessThan(building.LeftOutFigures(WallForm.Sum).RmseDb);
            building.Catalogue(WallForm.Detour).RmseDb.Should().BeLessThanOrEqualTo(building.Catalogue(WallForm.Sum).RmseDb);
        }
    }

    [Fact]
    public void Plain_regressions_give_the_figures_known_of_the_data()
    {
        AccuracySets.Flat.Fitted(WallForm.None).RmseDb.Should().BeApproximately(5.70, PublishedDigitDb);
        AccuracySets.All[2].Fitted(WallForm.None).RmseDb.Should().BeApproximately(4.54, PublishedDigitDb);
        AccuracySets.All[3].Fitted(WallForm.None).RmseDb.Should().BeApproximately(5.39, PublishedDigitDb);
        AccuracySets.All[4].Fitted(WallForm.None).RmseDb.Should().BeApproximately(4.51, PublishedDigitDb);
    }

    [Fact]
    public void Without_walls_two_as_exponent_costs_little_against_a_fit()
    {
        foreach (Assessment hall in AccuracySets.All.Skip(2).Take(3))
            hall.Catalogue(WallForm.None).RmseDb.Should().BeLessThanOrEqualTo(hall.Fitted(WallForm.None).RmseDb + (2 * HallToleranceDb) + 0.01);
    }

    [Fact]
    public void Six_links_at_868_MHz_share_an_offset_and_agree_within_6_dB_beyond_it()
    {
        double bias = SixLinks.Read().Average(link => link.ErrorDb);
        SixLinks.Read().Average(link => Math.Abs(link.ErrorDb - bias)).Should().BeLessThanOrEqualTo(6);
        bias.Should().BeLessThan(-20, "the link without a wall shows it too: no wall loss can mend it");
    }
}
