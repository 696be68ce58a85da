using CsCheck;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Legends;

namespace MeshSim.Drawing.Tests.Legends;

public sealed class TextFlowTests
{
    [Fact]
    public void Every_line_fits_and_no_word_is_lost_when_words_fit() =>
        Gen.String[Gen.Char['a', 'z'], 1, 12].Array[1, 30].Sample(words =>
        {
            using var ink = new Ink(); // an ink serves one thread
            string[] lines = [.. TextFlow.Lines(string.Join(' ', words), TextStyle.Body, 200, ink)];

            Array.TrueForAll(lines, line => ink.WidthOf(line, TextStyle.Body) <= 200).Should().BeTrue();
            string.Join(' ', lines).Should().Be(string.Join(' ', words));
        });

    [Fact]
    public void A_word_too_long_is_cut_with_an_ellipsis()
    {
        using var ink = new Ink();

        string cut = TextFlow.Cut(new string('w', 200), TextStyle.Body, 120, ink);

        cut.Should().EndWith("…");
        ink.WidthOf(cut, TextStyle.Body).Should().BeLessThanOrEqualTo(120);
    }

    [Fact]
    public void A_text_that_fits_is_left_alone()
    {
        using var ink = new Ink();

        TextFlow.Cut("hall", TextStyle.Body, 120, ink).Should().Be("hall");
    }
}
