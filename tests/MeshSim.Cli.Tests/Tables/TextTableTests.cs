using CsCheck;
using MeshSim.Cli.Tables;

namespace MeshSim.Cli.Tests.Tables;

public sealed class TextTableTests
{
    private static readonly Table Small = new(
        [new("Device"), new("m", IsNumber: true)],
        [["plug", "3.5"], ["far away sensor", "12.0"]]);

    [Fact]
    public void Words_stand_left_and_numbers_right() =>
        TextTable.Render(Small, 80).Should().Be(
            """
            Device              m
            ---------------  ----
            plug              3.5
            far away sensor  12.0

            """.ReplaceLineEndings("\n"));

    [Fact]
    public void A_long_cell_wraps_between_words_so_that_the_line_fits() =>
        TextTable.Render(Small, 14).Should().Be(
            """
            Device       m
            --------  ----
            plug       3.5
            far away  12.0
            sensor

            """.ReplaceLineEndings("\n"));

    [Fact]
    public void A_word_longer_than_its_column_is_broken() =>
        TextTable.Render(new([new("Name")], [["incomprehensibilities"]]), 8).Split('\n').Should().Contain(["incompre", "hensibil", "ities"]);

    [Fact]
    public void A_long_id_breaks_after_a_hyphen() =>
        TextTable.Render(new([new("Name")], [["roof-window-contact"]]), 15).Split('\n').Should().Contain(["roof-window-", "contact"]);

    [Theory]
    [InlineData(40)]
    [InlineData(80)]
    [InlineData(100)]
    public void No_line_exceeds_the_width(int width)
    {
        string words = string.Concat(Enumerable.Repeat("plaster and lath ", 12)).TrimEnd();
        var table = new Table([new("A"), new("B", IsNumber: true), new("C")], [[words, "1.0", words], ["x", "2.0", "y"]]) { Notes = [words] };

        TextTable.Render(table, width).Split('\n').Should().OnlyContain(line => line.Length <= width && line == line.TrimEnd());
    }

    [Fact]
    public void No_letter_is_lost_by_wrapping() =>
        Gen.String[Gen.Char["abc "], 0, 60].Sample(text =>
            Letters(TextTable.Paragraph(text, 10)).Should().Be(Letters(text)));

    private static string Letters(string text) => string.Concat(text.Where(char.IsLetter));

    [Fact]
    public void A_heading_keeps_to_two_lines_while_cells_can_break()
    {
        Table table = new([new("What is off"), new("95 % ms +", true), new("")], [["repeater-workshop-bench", "3.6", "x"]]);

        TextTable.Render(table, 24).Should().StartWith("                 95 %\nWhat is off      ms +\n");
    }
}
