using System.Text;
using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class SheetsWorkTests
{
    private static readonly string Terrace = Path.Combine(Run.Root, "floorplans", "quay-terrace");

    [Fact]
    public async Task All_sheets_go_into_one_file_and_the_text_says_what_is_on_which()
    {
        using var temporary = new TemporaryFolder();

        Run run = await Run.Of("sheets", Terrace, "--out", temporary["sheets.pdf"]);

        run.Code.Should().Be(0);
        Approval.Verify(run.Output, "sheets-quay-terrace.txt");
        PagesOf(temporary["sheets.pdf"]).Should().Be(3);
    }

    [Fact]
    public async Task A_folder_gets_a_file_for_each_storey()
    {
        using var temporary = new TemporaryFolder();

        Run run = await Run.Of("sheets", Terrace, "--out", temporary["sheets"], "--paper", "A4", "--scale", "100", "--network", "plugs", "--json");

        run.Code.Should().Be(0);
        JsonElement[] storeys = [.. run.Json.GetProperty("storeys").EnumerateArray()];
        storeys.Select(storey => storey.GetProperty("file").GetString()).Should().Equal("sheets_ground.pdf", "sheets_first.pdf", "sheets_loft.pdf");
        foreach (JsonElement storey in storeys)
        {
            PagesOf(Path.Combine(temporary["sheets"], storey.GetProperty("file").GetString()!))
                .Should().Be(storey.GetProperty("planSheets").GetInt32() + storey.GetProperty("keySheets").GetInt32());
            (storey.GetProperty("scale").GetInt32(), storey.GetProperty("paper").GetString()).Should().Be((100, "a4"));
        }
    }

    [Theory]
    [InlineData("--scale", "75")]
    [InlineData("--paper", "A2")]
    [InlineData("--network", "plug")]
    public async Task Another_scale_paper_or_network_is_refused_and_nothing_written(string option, string value)
    {
        using var temporary = new TemporaryFolder();

        Run run = await Run.Of("sheets", Terrace, "--out", temporary["sheets.pdf"], option, value);

        (run.Code, run.Output).Should().Be((2, ""));
        temporary.Contents().Should().BeEmpty();
    }

    [Fact]
    public async Task A_storey_that_nobody_could_paste_together_is_refused_with_the_way_out()
    {
        using var temporary = new TemporaryFolder();
        string home = Directory.CreateDirectory(temporary["home"]).FullName;
        foreach (string file in Directory.GetFiles(Run.TwoRooms))
        {
            string text = await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken);
            if (file.EndsWith("home.yaml", StringComparison.Ordinal))
                text = text.Replace(
                    "ceiling: 2.5\n",
                    "ceiling: 2.5\n    walls: [{ line: [[0, -900], [900, -900]], is: brick-half, name: hedge }]\n",
                    StringComparison.Ordinal);
            await File.WriteAllTextAsync(Path.Combine(home, Path.GetFileName(file)), text, TestContext.Current.CancellationToken);
        }

        Run run = await Run.Of("sheets", home, "--out", temporary["sheets.pdf"]);

        (run.Code, run.Output).Should().Be((2, ""));
        run.ErrorLines[^1].Should().MatchRegex("^error: storey \"ground\" needs [0-9]+ sheets at 1:100 on A3, more than 24; ");
        File.Exists(temporary["sheets.pdf"]).Should().BeFalse();
    }

    private static int PagesOf(string file) => Encoding.Latin1.GetString(File.ReadAllBytes(file)).Split("/MediaBox").Length - 1;
}
