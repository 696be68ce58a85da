using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Palettes;
using MeshSim.Drawing.Tests.Palettes;
using SkiaSharp;

namespace MeshSim.Drawing.Tests.Inks;

public sealed class ToneTests
{
    /// <summary>Clearly another colour at the width of a line: ten just noticeable differences of 2.3.</summary>
    private const double LeastDifferenceOfLines = 23;

    public static TheoryData<ColourVision> Readers => [.. ColourVision.All];

    [Theory]
    [InlineData(0, 0, 0, 255, 255, 255, 21)]
    [InlineData(255, 255, 255, 255, 255, 255, 1)]
    [InlineData(0x76, 0x76, 0x76, 255, 255, 255, 4.54)]
    public void The_formula_gives_the_known_contrasts(byte r1, byte g1, byte b1, byte r2, byte g2, byte b2, double expected)
    {
        const double twoDecimals = 0.005; // 4.54 for #767676 is quoted everywhere, to two decimals
        WcagContrast.Of((r1, g1, b1), (r2, g2, b2)).Should().BeApproximately(expected, twoDecimals);
    }

    [Fact]
    public void Every_text_can_be_read_on_the_sheet_and_on_a_label_over_any_margin()
    {
        SKColor[] texts = [Tone.Text, Tone.Quiet, Tone.Contour, Tone.Route, Tone.Repeater, Tone.Unreached];
        SKColor[] grounds = [Tone.Paper, .. AllClasses().Select(colour => Over(Tone.Plate, colour))];

        foreach (SKColor text in texts)
            foreach (SKColor ground in grounds)
                Contrast(text, ground).Should().BeGreaterThanOrEqualTo(WcagContrast.LeastOfText, "{0} on {1}", text, ground);
    }

    [Fact]
    public void The_name_of_a_storey_can_be_read_on_its_band() => Contrast(Tone.Text, Tone.Band).Should().BeGreaterThanOrEqualTo(WcagContrast.LeastOfText);

    [Fact]
    public void Letters_on_dark_signs_can_be_read()
    {
        foreach (SKColor ground in new[] { Tone.Text, Tone.Repeater, Tone.Unreached })
            Contrast(Tone.Paper, ground).Should().BeGreaterThanOrEqualTo(WcagContrast.LeastOfText, "paper on {0}", ground);
    }

    [Fact]
    public void Signs_stand_out_from_the_light_casing_that_is_drawn_around_them()
    {
        foreach (SKColor sign in new[] { Tone.Route, Tone.Repeater, Tone.Unreached, Tone.Wall })
            foreach (SKColor margin in AllClasses())
                Contrast(sign, Over(Tone.Plate, margin)).Should().BeGreaterThanOrEqualTo(WcagContrast.LeastOfSigns, "{0} over {1}", sign, margin);
    }

    [Theory]
    [MemberData(nameof(Readers))]
    public void Every_reader_tells_routes_from_contour_lines(ColourVision reader) =>
        reader.Difference(Tone.Route, Tone.Contour).Should().BeGreaterThan(LeastDifferenceOfLines);

    private static IEnumerable<SKColor> AllClasses() =>
        new MarginScale(new(6.4)).Classes.Concat(new MarginScale(new(14)).Classes).Concat(new DifferenceScale().Classes).Select(step => step.Colour);

    private static SKColor Over(SKColor above, SKColor below)
    {
        byte Mix(byte a, byte b) => (byte)Math.Round(((a * above.Alpha) + (b * (255.0 - above.Alpha))) / 255);
        return new(Mix(above.Red, below.Red), Mix(above.Green, below.Green), Mix(above.Blue, below.Blue));
    }

    private static double Contrast(SKColor first, SKColor second) =>
        WcagContrast.Of((first.Red, first.Green, first.Blue), (second.Red, second.Green, second.Blue));
}
