namespace MeshSim.Cli.Tests;

/// <summary>What README.md prints is what the program prints.</summary>
public sealed class ReadmeTests
{
    private static readonly string Readme = File.ReadAllText(Path.Combine(Run.Root, "README.md"));

    [Fact]
    public async Task The_answer_for_quay_terrace_is_quoted_as_it_is_given()
    {
        using var folder = new TemporaryFolder();

        Run run = await Run.Of("report", Path.Combine(Run.Root, "floorplans", "quay-terrace"), "--out", folder["report"]);

        run.Code.Should().Be((int)ExitCode.GoalNotMet);
        string quoted = Readme.Split("```").Single(block => block.TrimStart().StartsWith("plugs: ", StringComparison.Ordinal));
        run.OutputInOneLine.Should().Contain(Run.InOneLine(quoted));
        File.ReadAllBytes(Path.Combine(Run.Root, "docs", "pictures", "quay-terrace-plugs-loft.png"))
            .Should().Equal(File.ReadAllBytes(Path.Combine(folder["report"], "margin_plugs_loft.png")), "the picture shown is the one that comes out");
    }

    [Fact]
    public void Its_two_commands_are_there_for_the_build_to_read()
    {
        Readme.Should().Contain("\ndotnet test -c Release\n");
        Readme.Should().Contain("\ndotnet run -c Release --project src/MeshSim.Cli -- report floorplans/quay-terrace --out out/quay-terrace\n");
    }
}
