using System.Text.RegularExpressions;

namespace MeshSim.Cli.Tests;

/// <summary>Every command of docs/first-home.md, in order, on the files that the page prints.</summary>
public sealed partial class FirstHomeTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(Run.Root, "docs", "first-home.md"));

    [Fact]
    public async Task Every_command_of_the_page_does_what_it_should()
    {
        using var folder = new TemporaryFolder();
        int commands = 0, files = 0;
        foreach (Match block in Blocks().Matches(Page))
        {
            if (block.Groups["file"].Success)
            {
                File.WriteAllText(folder[block.Groups["file"].Value], block.Groups["text"].Value);
                files++;
                continue;
            }

            foreach (string line in block.Groups["text"].Value.Split('\n', StringSplitOptions.RemoveEmptyEntries))
            {
                Run run = await Run.Of([.. Words().Matches(line).Skip(1).Select(word => ArgumentOf(word.Value, folder))]);

                run.Code.Should().Be(0, "{0} said {1}", line, run.Error);
                commands++;
            }
        }

        (commands, files).Should().Be((11, 3));
        foreach (string made in new[] { "my-flat-plan.png", "fern-court-plan.png", "fern-court/import.txt", "my-flat-report/index.html", "fern-court-report/index.html" })
            File.Exists(folder[made]).Should().BeTrue("{0} is made", made);
        Directory.GetFiles(folder["maps"], "*.png").Should().NotBeEmpty();
    }

    [Fact]
    public async Task The_spreadsheet_of_the_page_is_read_as_it_is_meant()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder["my-flat"]);
        foreach (Match block in Blocks().Matches(Page).Where(block => block.Groups["file"].Success))
            File.WriteAllText(folder[block.Groups["file"].Value], block.Groups["text"].Value);

        Run run = await Run.Of("check", folder["my-flat"], "--json");

        run.Json.GetProperty("networks")[0].GetProperty("devices").GetInt32().Should().Be(5);
        run.Json.GetProperty("notices").EnumerateArray().Should().ContainSingle("of the decimal commas").Which.GetString().Should().Contain("\"0,5\" has a decimal comma and is read as 0.5");
    }

    private static string ArgumentOf(string word, TemporaryFolder folder)
    {
        string argument = word.Trim('"');
        if (argument.StartsWith("floorplans/", StringComparison.Ordinal)) return Path.Combine(Run.Root, argument);
        return argument.StartsWith("my-flat", StringComparison.Ordinal) || argument.StartsWith("fern-court", StringComparison.Ordinal) || argument == "maps" ? folder[argument] : argument;
    }

    [GeneratedRegex("(`(?<file>[a-z-]+/[a-z.]+)`:\n\n)?```(?<kind>sh|yaml|csv)\n(?<text>[^`]*)```", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Blocks();

    [GeneratedRegex("\"[^\"]*\"|\\S+", RegexOptions.NonBacktracking)]
    private static partial Regex Words();
}
