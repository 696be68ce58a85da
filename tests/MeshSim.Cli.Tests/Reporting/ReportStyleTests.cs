using System.Globalization;
using System.Text.RegularExpressions;
using MeshSim.Drawing.Tests.Palettes;

namespace MeshSim.Cli.Tests.Reporting;

/// <summary>The style sheet of the report, read as text.</summary>
public sealed partial class ReportStyleTests
{
    private static readonly string Style = File.ReadAllText(Path.Combine(Run.Root, "src", "MeshSim.Cli", "Reporting", "report.css"));

    private static readonly Dictionary<string, (byte Red, byte Green, byte Blue)> Colours = Definition().Matches(Style)
        .ToDictionary(match => match.Groups["name"].Value, match => Parse(match.Groups["hex"].Value));

    [Fact]
    public void Every_colour_is_one_of_those_that_the_sheet_names_at_its_top() =>
        Hex().Matches(Style[Style.IndexOf('}', StringComparison.Ordinal)..]).Should().BeEmpty();

    [Fact]
    public void Every_text_can_be_read_on_every_background()
    {
        string[] texts = [.. Text().Matches(Style).Select(match => match.Groups["name"].Value).Distinct()];
        string[] grounds = [.. Ground().Matches(Style).Select(match => match.Groups["name"].Value).Distinct()];
        texts.Should().BeEquivalentTo("ink", "soft");
        grounds.Should().BeEquivalentTo("paper", "tint", "answer");

        foreach (string text in texts)
            foreach (string ground in grounds)
                WcagContrast.Of(Colours[text], Colours[ground]).Should().BeGreaterThanOrEqualTo(WcagContrast.LeastOfText, "{0} on {1}", text, ground);
    }

    [Fact]
    public void What_can_be_focused_shows_it() => Style.Should().Contain("button:focus-visible").And.Contain("a:focus-visible").And.Contain(".scroll:focus-visible");

    private static (byte Red, byte Green, byte Blue) Parse(string hex) => (Channel(hex, 0), Channel(hex, 2), Channel(hex, 4));

    private static byte Channel(string hex, int start) => byte.Parse(hex.AsSpan(start, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    [GeneratedRegex("--(?<name>[a-z]+): #(?<hex>[0-9a-f]{6});", RegexOptions.NonBacktracking)]
    private static partial Regex Definition();

    [GeneratedRegex("#[0-9a-fA-F]{3,8}", RegexOptions.NonBacktracking)]
    private static partial Regex Hex();

    [GeneratedRegex("[{; ]color: var\\(--(?<name>[a-z]+)\\)", RegexOptions.NonBacktracking)]
    private static partial Regex Text();

    [GeneratedRegex("background: var\\(--(?<name>[a-z]+)\\)", RegexOptions.NonBacktracking)]
    private static partial Regex Ground();
}
