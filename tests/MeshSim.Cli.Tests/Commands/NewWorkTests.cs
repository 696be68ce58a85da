namespace MeshSim.Cli.Tests.Commands;

public sealed class NewWorkTests
{
    [Fact]
    public async Task What_it_makes_passes_check_at_once()
    {
        using var folder = new TemporaryFolder();

        Run made = await Run.Of("new", folder["home"], "--like", "bungalow");
        Run check = await Run.Of("check", folder["home"]);

        made.Code.Should().Be(0);
        made.Output.Should().Contain("My bungalow");
        check.Code.Should().Be(0);
        check.Error.Should().BeEmpty();
        Directory.GetFiles(folder["home"]).Select(file => Path.GetFileName(file)).Should().BeEquivalentTo("home.yaml", "devices.csv");
    }

    [Fact]
    public async Task A_folder_with_something_in_it_is_left_alone()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder["home"]);
        File.WriteAllText(Path.Combine(folder["home"], "notes.txt"), "mine");

        Run run = await Run.Of("new", folder["home"]);

        run.Code.Should().Be(2);
        run.Error.Should().Contain("holds files already");
        Directory.GetFiles(folder["home"]).Should().ContainSingle();
    }

    [Fact]
    public async Task A_shape_that_is_not_there_is_refused_with_those_that_are()
    {
        using var folder = new TemporaryFolder();

        Run run = await Run.Of("new", folder["home"], "--like", "castle");

        run.Code.Should().Be(2);
        run.Error.Should().Contain("terrace");
        Directory.Exists(folder["home"]).Should().BeFalse();
    }

    [Fact]
    public async Task Json_counts_what_was_made()
    {
        using var folder = new TemporaryFolder();

        Run run = await Run.Of("new", folder["home"], "--json");

        run.Json.GetProperty("home").GetString().Should().Be("My flat");
        run.Json.GetProperty("storeys")[0].GetProperty("rooms").GetInt32().Should().Be(6);
    }
}
