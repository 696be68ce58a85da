using MeshSim.Drawing.Palettes;
using SkiaSharp;

namespace MeshSim.Drawing.Tests.Palettes;

public sealed class MarginScaleTests
{
    /// <summary>
    /// Twice the just noticeable difference of 2.3 (Mahy, Van Eycken, Oosterlinck 1994, from memory): neighbouring steps must be
    /// told apart at a glance, not under a lamp.
    /// </summary>
    private const double LeastDifference = 4.6;

    /// <summary>Lightness alone must do in grey: nearly two just noticeable differences.</summary>
    private const double LeastLightnessStep = 4;

    /// <summary>The design margins that a home can ask for: shadowing 3 to 8 dB at availabilities 0.5 to 0.99.</summary>
    public static TheoryData<double> DesignMargins => [0, 2, 6.4, 8, 10, 11.6, 18.6];

    public static TheoryData<ColourVision> Readers => [.. ColourVision.All];

    [Fact]
    public void The_simulated_readers_see_grey_as_grey()
    {
        const double printedDigits = 2e-6; // the matrices have six decimals
        foreach (ColourVision reader in ColourVision.All)
            for (int row = 0; row < 3; row++)
                reader.Matrix[(3 * row)..((3 * row) + 3)].Sum().Should().BeApproximately(1, printedDigits, reader.Name);
    }

    [Theory]
    [MemberData(nameof(DesignMargins))]
    public void Lightness_rises_with_the_margin(double designDb)
    {
        double[] lightness = [.. new MarginScale(new(designDb)).Classes.Select(step => ColourVision.All[0].See(step.Colour).Lightness)];

        for (int i = 1; i < lightness.Length; i++) (lightness[i] - lightness[i - 1]).Should().BeGreaterThan(LeastLightnessStep);
    }

    [Theory]
    [MemberData(nameof(Readers))]
    public void Every_reader_tells_neighbouring_steps_apart(ColourVision reader)
    {
        foreach (double designDb in new[] { 0, 2, 6.4, 8, 10, 11.6, 18.6 })
        {
            var classes = new MarginScale(new(designDb)).Classes;
            for (int i = 1; i < classes.Length; i++)
                reader.Difference(classes[i - 1].Colour, classes[i].Colour).Should().BeGreaterThan(LeastDifference);
        }
    }

    [Theory]
    [MemberData(nameof(Readers))]
    public void Every_reader_sees_lightness_rise(ColourVision reader)
    {
        double[] lightness = [.. new MarginScale(new(6.4)).Classes.Select(step => reader.See(step.Colour).Lightness)];

        lightness.Should().BeInAscendingOrder();
    }

    [Fact]
    public void No_colour_leaves_the_gamut_of_the_screen()
    {
        // A colour cut to the gamut has a channel at 0 or 255; the scale stays clear of both.
        foreach (SKColor colour in new MarginScale(new(6.4)).Classes.Select(step => step.Colour))
            new[] { colour.Red, colour.Green, colour.Blue }.Should().OnlyContain(channel => channel > 0 && channel < 255);
    }

    [Fact]
    public void The_step_across_the_design_margin_is_the_widest_among_its_neighbours()
    {
        var scale = new MarginScale(new(6.4));
        double[] lightness = [.. scale.Classes.Select(step => ColourVision.All[0].See(step.Colour).Lightness)];
        int first = scale.Classes.IndexOf(scale.Classes.First(step => !step.IsBelowDesign));

        (lightness[first] - lightness[first - 1]).Should().BeGreaterThan(lightness[first + 1] - lightness[first]);
    }

    [Fact]
    public void Edges_are_zero_the_design_margin_and_every_ten_decibels() =>
        new MarginScale(new(6.4)).Edges.Should().Equal(0, 6.4, 10, 20, 30, 40, 50);

    [Fact]
    public void An_edge_too_near_to_the_design_margin_gives_way() =>
        new MarginScale(new(11.6)).Edges.Should().Equal(0, 11.6, 20, 30, 40, 50);

    [Fact]
    public void A_design_margin_of_zero_leaves_one_hatched_class() =>
        new MarginScale(new(0)).Classes.Count(step => step.IsBelowDesign).Should().Be(1);

    [Theory]
    [InlineData(-3, 0)]
    [InlineData(0, 1)]
    [InlineData(6.399, 1)]
    [InlineData(6.4, 2)]
    [InlineData(49.9, 6)]
    [InlineData(80, 7)]
    public void A_margin_on_an_edge_belongs_to_the_class_above(double marginDb, int index) =>
        new MarginScale(new(6.4)).ClassOf(marginDb).Should().Be(index);

    [Fact]
    public void Exactly_the_classes_below_the_design_margin_are_hatched()
    {
        foreach (MarginClass step in new MarginScale(new(18.6)).Classes)
            step.IsBelowDesign.Should().Be(step.UpperDb <= 18.6);
    }

    [Fact]
    public void Ranges_are_written_without_a_culture() =>
        new MarginScale(new(6.4)).Classes.Select(step => step.Range).Should()
            .Equal("below 0", "0 to 6.4", "6.4 to 10", "10 to 20", "20 to 30", "30 to 40", "40 to 50", "50 and more");
}
