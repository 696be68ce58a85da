using System.Globalization;
using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class ReportWorkTests
{
    /// <summary>Coarse maps are as good for these tests, and fast.</summary>
    private static readonly string[] Coarse = ["--step", "0.5"];

    [Fact]
    public async Task The_folder_holds_the_page_its_pictures_and_the_figures()
    {
        using var temporary = new TemporaryFolder();

        Run run = await Run.Of(["report", Run.LongHouse, "--out", temporary["out"], .. Coarse]);

        run.Code.Should().Be(1, "a device is unreachable as the home stands");
        run.Output.Should().Contain("Add 1 repeater: second-outlet").And.EndWith($"Report: {Path.Combine(temporary["out"], "index.html")}\n");
        string[] files = [.. Directory.EnumerateFiles(temporary["out"]).Select(file => Path.GetFileName(file))];
        files.Should().BeEquivalentTo("index.html", "links.json", "made-by-meshsim.txt", "map.json", "margin_plugs_ground.png", "repeaters.json", "routes.json");
    }

    [Fact]
    public async Task A_name_that_ends_in_html_is_the_page_alone_with_the_bytes_of_the_one_in_the_folder()
    {
        using var temporary = new TemporaryFolder();
        await Run.Of(["report", Run.LongHouse, "--out", temporary["out"], .. Coarse]);

        Run run = await Run.Of(["report", Run.LongHouse, "--out", temporary["flat.html"], .. Coarse]);

        run.Code.Should().Be(1);
        run.Output.Should().EndWith($"Report: {temporary["flat.html"]}\n");
        (await File.ReadAllBytesAsync(temporary["flat.html"], TestContext.Current.CancellationToken))
            .Should().Equal(await File.ReadAllBytesAsync(temporary["out/index.html"], TestContext.Current.CancellationToken));
        Directory.EnumerateFiles(temporary.Path).Should().ContainSingle("nothing else is written beside the page");
    }

    [Fact]
    public async Task Dropouts_are_explained_with_fixes()
    {
        using var temporary = new TemporaryFolder();

        await Run.Of(["report", Run.LongHouse, "--out", temporary["flat.html"], .. Coarse]);

        string page = await File.ReadAllTextAsync(temporary["flat.html"], TestContext.Current.CancellationToken);
        page.Should().Contain("far-sensor").And.Contain("cannot be reached: it lacks").And.Contain("plug a repeater into second-outlet").And.Contain("dB in all,");
    }

    [Fact]
    public async Task Walls_without_rooms_make_a_report_too()
    {
        using var temporary = new TemporaryFolder();

        Run run = await Run.Of(["report", Run.TracedDrawing, "--out", temporary["out"], .. Coarse]);

        run.Error.Should().BeEmpty();
        (await File.ReadAllTextAsync(temporary["out/index.html"], TestContext.Current.CancellationToken)).Should().Contain("No rooms are drawn").And.Contain("network plugs, storey ground");
    }

    [Fact]
    public async Task Json_tells_the_answer_by_ids()
    {
        using var temporary = new TemporaryFolder();

        Run run = await Run.Of(["report", Run.LongHouse, "--json", "--out", temporary["out"], .. Coarse]);

        JsonElement network = run.Json.GetProperty("networks")[0];
        network.GetProperty("unreachable")[0].GetString().Should().Be("far-sensor");
        network.GetProperty("repeaters")[0].GetString().Should().Be("second-outlet");
        network.GetProperty("ways").GetInt32().Should().Be(2);
        network.GetProperty("holdStates").GetBoolean().Should().BeTrue();
        network.GetProperty("statesHeld").GetArrayLength().Should().Be(0, "none is marked");
        network.GetProperty("unserved").EnumerateArray().Select(id => id.GetString()).Should().Equal(["far-sensor"], "it hangs on that repeater");
    }

    [Fact]
    public async Task The_figures_are_those_of_the_single_commands()
    {
        using var temporary = new TemporaryFolder();
        await Make(temporary);

        foreach (string command in new[] { "links", "routes", "repeaters" })
        {
            string single = (await Run.Of(command, Run.TwoRooms, "--json")).Output;
            (await File.ReadAllTextAsync(temporary[$"out/{command}.json"], TestContext.Current.CancellationToken)).Should().Be(single);
        }
    }

    [Fact]
    public async Task The_same_home_gives_the_same_bytes_in_any_culture()
    {
        using var temporary = new TemporaryFolder();
        CultureInfo before = CultureInfo.CurrentCulture;
        await Make(temporary);
        IReadOnlyDictionary<string, string> first = temporary.Contents();

        CultureInfo.CurrentCulture = Run.DecimalComma();
        try
        {
            await Make(temporary);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        temporary.Contents().Should().BeEquivalentTo(first);
    }

    [Fact]
    public async Task An_earlier_report_stays_when_the_run_fails()
    {
        using var temporary = new TemporaryFolder();
        await Make(temporary);
        IReadOnlyDictionary<string, string> before = temporary.Contents();

        Run run = await Run.Of("report", Path.Combine(Run.Data, "no-such-home"), "--out", temporary["out"]);

        run.Code.Should().Be(2);
        temporary.Contents().Should().BeEquivalentTo(before);
    }

    [Fact]
    public async Task A_folder_that_is_no_report_is_left_alone()
    {
        using var temporary = new TemporaryFolder();
        await File.WriteAllTextAsync(temporary["thesis.txt"], "mine", TestContext.Current.CancellationToken);

        Run run = await Run.Of("report", Run.TwoRooms, "--out", temporary.Path);

        run.Code.Should().Be(2);
        run.ErrorLines.Should().ContainSingle().Which.Should().Contain("\"thesis.txt\"");
        temporary.Contents().Should().ContainSingle();
    }

    private static async Task Make(TemporaryFolder temporary) =>
        (await Run.Of(["report", Run.TwoRooms, "--out", temporary["out"], .. Coarse])).Code.Should().Be(0);
}
