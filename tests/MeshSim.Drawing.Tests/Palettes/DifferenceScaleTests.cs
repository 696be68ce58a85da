using MeshSim.Drawing.Palettes;
using SkiaSharp;

namespace MeshSim.Drawing.Tests.Palettes;

public sealed class DifferenceScaleTests
{
    /// <summary>Twice the just noticeable difference of 2.3 (Mahy, Van Eycken, Oosterlinck 1994, from memory).</summary>
    private const double LeastDifference = 4.6;

    /// <summary>The two sides must never be taken for each other: far more than neighbours have to differ.</summary>
    private const double LeastDifferenceOfSides = 20;

    /// <summary>A channel is rounded to one of 256 steps.</summary>
    private const double LightnessRounding = 0.5;

    private static readonly SKColor[] Colours = [.. new DifferenceScale().Classes.Select(step => step.Colour)];

    public static TheoryData<ColourVision> Readers => [.. ColourVision.All];

    [Theory]
    [MemberData(nameof(Readers))]
    public void Every_reader_tells_all_steps_apart(ColourVision reader)
    {
        for (int i = 0; i < Colours.Length; i++)
            for (int j = 0; j < i; j++)
                reader.Difference(Colours[i], Colours[j]).Should().BeGreaterThan(LeastDifference, "{0} and {1}", i, j);
    }

    [Theory]
    [MemberData(nameof(Readers))]
    public void Every_reader_tells_the_sides_apart(ColourVision reader)
    {
        for (int step = 1; step <= 3; step++)
            reader.Difference(Colours[4 - step], Colours[4 + step]).Should().BeGreaterThan(LeastDifferenceOfSides);
    }

    [Fact]
    public void Both_sides_get_darker_alike()
    {
        double[] lightness = [.. Colours.Select(colour => ColourVision.All[0].See(colour).Lightness)];

        for (int step = 1; step <= 3; step++)
        {
            lightness[4 + step].Should().BeApproximately(lightness[4 - step], LightnessRounding);
            lightness[4 + step].Should().BeLessThan(lightness[3 + step]);
        }
    }

    [Fact]
    public void No_colour_leaves_the_gamut_of_the_screen()
    {
        foreach (SKColor colour in Colours)
            new[] { colour.Red, colour.Green, colour.Blue }.Should().OnlyContain(channel => channel > 0 && channel < 255);
    }

    [Fact]
    public void Only_where_neither_covers_is_hatched()
    {
        var scale = new DifferenceScale();

        scale.Classes.Where(step => step.IsBelowDesign).Should().ContainSingle().Which.Should().Be(scale.Classes[scale.ClassOf(DifferenceScale.NeitherDb)]);
    }

    [Fact]
    public void Ranges_carry_their_signs() =>
        new DifferenceScale().Classes.Select(DifferenceScale.RangeOf).Should()
            .Equal("neither covers", "below -20", "-20 to -10", "-10 to -3", "-3 to +3", "+3 to +10", "+10 to +20", "+20 and more");
}
