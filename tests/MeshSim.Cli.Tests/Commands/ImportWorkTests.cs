namespace MeshSim.Cli.Tests.Commands;

public sealed class ImportWorkTests
{
    private static readonly string Fern = Path.Combine(Run.Root, "floorplans", "drawings", "fern-court.svg");

    [Fact]
    public async Task A_drawing_becomes_a_home_that_passes_check_and_an_account_of_what_was_left_out()
    {
        using var folder = new TemporaryFolder();

        Run made = await Run.Of("import", Fern, "--length", "tape=4.00", "--out", folder["home"]);
        Run check = await Run.Of("check", folder["home"]);

        made.Code.Should().Be(0);
        made.Output.Should().StartWith("fern-court is in ").And.Contain("rooms that walls enclose");
        made.ErrorLines.Should().Contain(line => line.EndsWith("notice: g \"old-furniture\" is left out; it is hidden (display: none)", StringComparison.Ordinal));
        check.Code.Should().Be(0);
        check.Error.Should().BeEmpty();
        File.ReadAllText(Path.Combine(folder["home"], "import.txt")).Should().Contain("it is hidden (display: none)").And.Contain("cavity-brick");
    }

    [Fact]
    public async Task Json_says_the_same()
    {
        using var folder = new TemporaryFolder();

        Run run = await Run.Of("import", Fern, "--scale", "50", "--name", "Fern Court 3", "--region", "EU", "--out", folder["home"], "--json");

        run.Json.GetProperty("home").GetString().Should().Be("Fern Court 3");
        run.Json.GetProperty("leftOut").GetArrayLength().Should().Be(3, "the tape is one more line that means nothing");
        run.Json.GetProperty("taken").GetArrayLength().Should().BeGreaterThan(5);
    }

    [Theory]
    [InlineData("--length", "tape")]
    [InlineData("--length", "tape=4,00")]
    [InlineData("--scale", "0")]
    [InlineData("--snap", "3")]
    [InlineData("--unit", "furlong")]
    [InlineData("--region", "Atlantis")]
    [InlineData("--mapping", "nowhere.yaml")]
    [InlineData("--length", "rope=4")]
    public async Task A_mistake_ends_with_2_and_nothing_written(string option, string value)
    {
        using var folder = new TemporaryFolder();

        Run run = await Run.Of("import", Fern, option, value, "--out", folder["home"]);

        run.Code.Should().Be(2);
        run.ErrorLines.Should().NotBeEmpty();
        run.Output.Should().BeEmpty();
        Directory.EnumerateFileSystemEntries(Path.GetDirectoryName(folder["home"])!).Should().BeEmpty();
    }

    [Fact]
    public async Task A_home_that_is_there_is_never_replaced()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder["home"]);
        File.WriteAllText(Path.Combine(folder["home"], "home.yaml"), "mine");

        Run run = await Run.Of("import", Fern, "--length", "tape=4", "--out", folder["home"]);

        run.Code.Should().Be(2);
        File.ReadAllText(Path.Combine(folder["home"], "home.yaml")).Should().Be("mine");
    }
}
