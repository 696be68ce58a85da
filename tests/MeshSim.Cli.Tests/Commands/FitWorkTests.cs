using System.Text.Json;

namespace MeshSim.Cli.Tests.Commands;

public sealed class FitWorkTests
{
    private static readonly string Terrace = Path.Combine(Run.Root, "floorplans", "quay-terrace");

    [Fact]
    public async Task The_device_in_the_metal_box_comes_first_in_words_and_in_json()
    {
        Run text = await Run.Of("fit", Terrace);
        Run json = await Run.Of("fit", Terrace, "--network", "plugs", "--json");

        text.Code.Should().Be((int)ExitCode.GoalNotMet, "something is not as planned");
        Approval.Verify(text.Output, "fit-quay-terrace.txt");
        text.Output.Should().StartWith("plugs: look at dining-plug:").And.Contain("a metal box around it");
        text.Output.Split('\n').Should().OnlyContain(line => line.Length <= 100);
        JsonElement first = json.Json.GetProperty("findings")[0];
        first.GetProperty("kind").GetString().Should().Be("metal-box");
        first.GetProperty("device").GetString().Should().Be("dining-plug");
        json.Json.GetProperty("after").GetProperty("rmseDb").GetDouble().Should().BeLessThan(json.Json.GetProperty("before").GetProperty("rmseDb").GetDouble());
    }

    [Fact]
    public async Task Fitted_values_are_stored_used_said_and_deleted_again()
    {
        using var folder = new TemporaryFolder();
        string home = folder["terrace"];
        Directory.CreateDirectory(home);
        foreach (string file in Directory.EnumerateFiles(Terrace)) File.Copy(file, Path.Combine(home, Path.GetFileName(file)));
        Run before = await Run.Of("links", home, "--network", "plugs", "--json");

        Run written = await Run.Of("fit", home, "--write");
        Run after = await Run.Of("links", home, "--network", "plugs", "--json"), text = await Run.Of("routes", home, "--network", "plugs");
        Run companion = await Run.Of("links", home, "--network", "plugs", "--model", "site-general", "--json");
        Run again = await Run.Of("fit", home);
        File.Delete(Path.Combine(home, "fit.yaml"));
        Run restored = await Run.Of("links", home, "--network", "plugs", "--json");

        written.Error.Should().Contain("fit.yaml: written");
        after.Error.Should().Be("fit.yaml: fitted values are used for plugs; delete the file to go back to the catalogue\n");
        after.Json.GetProperty("fittedToReadings").GetInt32().Should().Be(288);
        after.Output.Should().NotBe(before.Output);
        Mean(after, "lossesDb").Should().BeLessThan(0.6 * Mean(before, "lossesDb"), "what was read is known better");
        text.OutputInOneLine.Should().Contain("fitted to 288 readings (fit.yaml)");
        companion.Error.Should().Contain("are not used by site-general");
        again.Output.Should().Be(written.Output, "a fit begins at the catalogue, not at an earlier fit");
        restored.Output.Should().Be(before.Output);
    }

    [Fact]
    public async Task A_home_without_readings_is_refused_and_nothing_is_written()
    {
        Run run = await Run.Of("fit", Run.TinShed, "--write");

        run.Code.Should().Be((int)ExitCode.BadInput);
        run.Output.Should().BeEmpty();
        run.Error.Should().Contain("there are no readings to fit to");
        File.Exists(Path.Combine(Run.TinShed, "fit.yaml")).Should().BeFalse();
    }

    private static double Mean(Run links, string figure) =>
        links.Json.GetProperty("links").EnumerateArray().Average(link => link.GetProperty("uncertainty").GetProperty(figure).GetDouble());
}
