using MeshSim.OpenData.Tests.Accuracy.Fits;
using MeshSim.OpenData.Tests.Accuracy.Sets;
using MeshSim.Propagation;

namespace MeshSim.OpenData.Tests.Accuracy;

/// <summary>
/// How near the models come to what was measured. Where a goal is missed its test holds the figure that was reached, so that it
/// does not get worse unseen, and says what the goal was.
/// </summary>
public sealed class AssessmentTests
{
    /// <summary>A figure of two decimals, found again by a computation of our own.</summary>
    private const double DigitDb = 0.006;

    /// <summary>A figure that was reached, of one decimal.</summary>
    private const double TenthDb = 0.06;

    [Fact]
    public void In_the_flat_a_receiver_left_out_is_met_within_4_2_dB() =>
        AccuracySets.Flat.FiguresOf(AccuracySets.Flat.LeftOut(ModelName.Detour)).RmseDb.Should().BeLessThanOrEqualTo(4.2);

    [Fact]
    public void In_the_flat_the_catalogue_without_a_fit_is_within_5_dB() => CatalogueRmseDb(AccuracySets.Flat, ModelName.Detour).Should().BeLessThanOrEqualTo(5);

    [Fact]
    public void In_the_office_test_points_are_met_within_7_dB_by_the_fit_with_its_offsets() =>
        AccuracySets.Office.SetApart(ModelName.Detour, hasOffsets: true).RmseDb.Should().BeLessThanOrEqualTo(7);

    /// <summary>The goal of 7.0 dB is missed with one offset for all; by other phones on the test points, for the most part.</summary>
    [Fact]
    public void In_the_office_test_points_are_7_35_dB_off_with_one_offset_where_7_was_the_goal() =>
        AccuracySets.Office.SetApart(ModelName.Detour, hasOffsets: false).RmseDb.Should().BeApproximately(7.35, DigitDb);

    [Fact]
    public void A_way_round_lowers_the_error_of_transmitters_left_out_in_both_buildings_with_walls()
    {
        foreach (Assessment building in new[] { AccuracySets.Flat, AccuracySets.Office })
        {
            building.FiguresOf(building.LeftOut(ModelName.Detour)).RmseDb.Should().BeLessThan(building.FiguresOf(building.LeftOut(ModelName.LogDistance)).RmseDb);
            CatalogueRmseDb(building, ModelName.Detour).Should().BeLessThanOrEqualTo(CatalogueRmseDb(building, ModelName.LogDistance));
        }
    }

    [Fact]
    public void Plain_regressions_give_the_figures_known_of_the_data()
    {
        LineRmseDb(AccuracySets.Flat).Should().BeApproximately(5.70, DigitDb);
        LineRmseDb(AccuracySets.All[2]).Should().BeApproximately(4.54, DigitDb);
        LineRmseDb(AccuracySets.All[3]).Should().BeApproximately(5.39, DigitDb);
        LineRmseDb(AccuracySets.All[4]).Should().BeApproximately(4.51, DigitDb);
    }

    /// <summary>The published figures have two decimals; a robust estimate with a prior cannot reach below least squares.</summary>
    [Fact]
    public void Without_walls_the_fit_is_as_good_as_least_squares()
    {
        foreach (Assessment hall in AccuracySets.All.Skip(2).Take(3))
            hall.ErrorsOf(hall.Fitted(ModelName.Detour, hasOffsets: false)).RmseDb.Should().BeLessThanOrEqualTo(LineRmseDb(hall) + DigitDb);
    }

    /// <summary>The goal was the error of a fit of distance; without a fit n = 2 misses it by 0.04 to 0.2 dB.</summary>
    [Fact]
    public void Without_walls_and_without_a_fit_two_as_exponent_costs_little()
    {
        CatalogueRmseDb(AccuracySets.All[2], ModelName.Detour).Should().BeApproximately(4.62, DigitDb);
        CatalogueRmseDb(AccuracySets.All[3], ModelName.Detour).Should().BeApproximately(5.43, DigitDb);
        CatalogueRmseDb(AccuracySets.All[4], ModelName.Detour).Should().BeApproximately(4.71, DigitDb);
    }

    /// <summary>The goal of a mean error of 6 dB with nothing fitted is missed by far: the link in the open is 23 dB off as well.</summary>
    [Fact]
    public void Six_links_at_868_MHz_are_31_2_dB_off_where_6_was_the_goal_and_4_2_with_one_offset()
    {
        SixthLink[] links = [.. SixLinks.Read()];
        double bias = links.Average(link => link.ErrorDb);

        links.Average(link => Math.Abs(link.ErrorDb)).Should().BeApproximately(31.2, TenthDb);
        links.Single(link => link.HeavyWalls + link.WoodWalls == 0).ErrorDb.Should().BeApproximately(-23.4, TenthDb, "no wall loss can mend that");
        links.Average(link => Math.Abs(link.ErrorDb - bias)).Should().BeLessThanOrEqualTo(6);
    }

    /// <summary>The goal was 9 to 10 dB by ± 3 dB for a wall of brick or concrete; one brick and half a brick miss it.</summary>
    [Fact]
    public void Heavy_walls_at_868_MHz_are_within_3_dB_as_concrete_and_not_as_solid_brick()
    {
        SixLinks.LossDb("concrete-200").Should().BeInRange(6, 13);
        SixLinks.LossDb("cavity-brick").Should().BeInRange(6, 13);
        SixLinks.LossDb("brick-full").Should().BeApproximately(5.4, TenthDb);
        SixLinks.LossDb("brick-half").Should().BeApproximately(2.8, TenthDb);
        SixLinks.LossDb("door-timber").Should().BeInRange(0, 6);
    }

    /// <summary>The goal of 3 dB between the levels at which half of the frames arrive is missed; the page explains some of it.</summary>
    [Fact]
    public void Half_of_the_frames_arrive_8_9_dB_above_the_computed_level_where_3_was_the_goal() =>
        (FrameCurve.LevelOf(0.5, FrameCurve.Read()) - FrameCurve.PredictedLevelOf(0.5)).Should().BeApproximately(8.9, TenthDb);

    private static double CatalogueRmseDb(Assessment building, ModelName model) => building.ErrorsOf(building.Catalogue(model)).RmseDb;

    private static double LineRmseDb(Assessment building) => building.ErrorsOf(building.Line).RmseDb;
}
