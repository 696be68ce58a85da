using System.Globalization;
using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class MapWorkTests
{
    /// <summary>Coarse maps are as good for these tests, and fast.</summary>
    private const string Step = "0.5";

    [Fact]
    public async Task The_text_names_the_dark_rooms()
    {
        Run run = await Run.Of("map", Run.TinShed, "--step", Step);

        run.Code.Should().Be(1);
        Approval.Verify(run.Output, "map-tin-shed.txt");
    }

    [Fact]
    public async Task Walls_without_rooms_have_a_picture_and_no_table_of_rooms()
    {
        using var temporary = new TemporaryFolder();

        Run run = await Run.Of("map", Run.TracedDrawing, "--step", Step, "--out", temporary["maps"], "--values");

        run.Output.Should().StartWith("No rooms are drawn").And.NotContain("Dark %");
        Directory.EnumerateFiles(temporary["maps"], "*.png").Should().ContainSingle();
        string[] lines = await File.ReadAllLinesAsync(temporary["maps/margin_plugs.csv"], TestContext.Current.CancellationToken);
        lines.Skip(1).Should().HaveCountGreaterThan(200, "every point of the grid has a value").And.OnlyContain(line => line.StartsWith("ground,", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Json_has_an_object_for_each_network_and_storey()
    {
        Run run = await Run.Of("map", Run.TwoRooms, "--step", Step, "--height", "1.5", "--json");

        JsonElement[] maps = [.. run.Json.EnumerateArray()];
        maps.Select(map => map.GetProperty("network").GetString()).Should().Equal("plugs", "meters");
        maps[0].GetProperty("stepMetres").GetDouble().Should().Be(0.5);
        maps[0].GetProperty("heightMetres").GetDouble().Should().Be(1.5);
        maps[0].GetProperty("picture").ValueKind.Should().Be(JsonValueKind.Null);
        maps[0].GetProperty("rooms").EnumerateArray().Select(room => room.GetProperty("room").GetString()).Should().Equal("left", "right");
    }

    [Fact]
    public async Task Pictures_and_values_go_to_the_folder()
    {
        using var temporary = new TemporaryFolder();

        Run run = await Run.Of("map", Run.TwoRooms, "--step", Step, "--out", temporary["maps"], "--values");

        run.Code.Should().Be(0);
        Directory.EnumerateFiles(temporary["maps"]).Select(Path.GetFileName).Should().BeEquivalentTo(
            "made-by-meshsim.txt", "margin_meters.csv", "margin_meters_ground.png", "margin_plugs.csv", "margin_plugs_ground.png");
        string[] lines = await File.ReadAllLinesAsync(temporary["maps/margin_plugs.csv"], TestContext.Current.CancellationToken);
        lines[0].Should().Be("storey,x,y,valueDb");
        lines.Skip(1).Should().OnlyContain(line => line.Split(',').Length == 4 && double.IsFinite(double.Parse(line.Split(',')[3], CultureInfo.InvariantCulture)));
        byte[] signature = [0x89, (byte)'P', (byte)'N', (byte)'G'];
        (await File.ReadAllBytesAsync(temporary["maps/margin_plugs_ground.png"], TestContext.Current.CancellationToken))[..4].Should().Equal(signature);
    }

    [Theory]
    [InlineData("svg", "<svg")]
    [InlineData("pdf", "%PDF")]
    public async Task Pictures_come_in_the_format_asked_for(string format, string beginning)
    {
        using var temporary = new TemporaryFolder();

        Run run = await Run.Of("map", Run.TwoRooms, "--network", "plugs", "--step", Step, "--out", temporary["maps"], "--format", format, "--json");

        run.Json.GetProperty("picture").GetString().Should().Be($"margin_plugs_ground.{format}");
        (await File.ReadAllTextAsync(temporary[$"maps/margin_plugs_ground.{format}"], TestContext.Current.CancellationToken)).Should().StartWith(beginning);
    }

    [Fact]
    public async Task One_sheet_holds_the_storeys_of_a_network()
    {
        using var temporary = new TemporaryFolder();

        Run run = await Run.Of("map", Run.TwoRooms, "--step", Step, "--out", temporary["maps"], "--one-sheet", "--format", "svg", "--json");

        Directory.EnumerateFiles(temporary["maps"], "*.svg").Select(Path.GetFileName).Should().BeEquivalentTo("margin_meters_sheet-1.svg", "margin_plugs_sheet-1.svg");
        run.Json[0].GetProperty("picture").GetString().Should().Be("margin_plugs_sheet-1.svg");
    }

    [Fact]
    public async Task One_sheet_needs_a_folder() =>
        (await Run.Of("map", Run.TwoRooms, "--one-sheet")).Error.Should().Contain("--one-sheet needs --out");

    [Fact]
    public async Task A_map_of_more_points_than_a_machine_holds_is_refused_with_what_would_help()
    {
        using var temporary = new TemporaryFolder();
        string home = temporary["home"];
        Directory.CreateDirectory(home);
        foreach (string file in Directory.EnumerateFiles(Run.TwoRooms)) File.Copy(file, Path.Combine(home, Path.GetFileName(file)));
        string path = Path.Combine(home, "home.yaml");
        string text = await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken);
        text.Should().Contain("to: [8, 4]");
        await File.WriteAllTextAsync(path, text.Replace("to: [8, 4]", "to: [900, 900]", StringComparison.Ordinal), TestContext.Current.CancellationToken);

        Run run = await Run.Of("map", home, "--out", temporary["maps"]);

        run.Code.Should().Be(2);
        run.Error.Should().Contain("--step 0.1 makes 81").And.Contain("give a larger step");
        Directory.Exists(temporary["maps"]).Should().BeFalse();
    }

    [Fact]
    public async Task An_unknown_storey_is_answered_with_the_known_ones()
    {
        Run run = await Run.Of("map", Run.TwoRooms, "--storey", "attic");

        run.Code.Should().Be(2);
        run.Error.Should().Contain("\"ground\"");
    }
}
