using MeshSim.Cli.Commands;

namespace MeshSim.Cli.Tests;

/// <summary>Text that is piped fits the narrowest terminal in use and carries no control sequences, whatever the command and the home.</summary>
public sealed class OutputWidthTests
{
    private static readonly string[] Homes =
    [
        Path.Combine(Run.Root, "floorplans", "quay-terrace"), Path.Combine(Run.Root, "floorplans", "harbour-flat"),
        Run.TwoRooms, Run.LongHouse, Run.TinShed, Run.SwitchedLamp, Path.Combine(Run.Data, "wired-house"),
    ];

    private static readonly string Drawing = Path.Combine(Run.Root, "floorplans", "drawings", "fern-court.svg");

    /// <summary>How each command is called on a home, with the options that make it say the most; {out} is a place for files, {home} the home again.</summary>
    private static readonly Dictionary<string, string[]> OnHomes = new(StringComparer.Ordinal)
    {
        ["check"] = [],
        ["report"] = ["--out", "{out}", "--step", "1"],
        ["routes"] = [],
        ["routers"] = [],
        ["rehearse"] = ["--pairs"],
        ["explain"] = ["{device}"],
        ["links"] = [],
        ["map"] = ["--step", "1"],
        ["bands"] = ["--step", "1"],
        ["hub"] = [],
        ["repeaters"] = ["--ladder", "3"],
        ["sheets"] = ["--out", "{out}"],
        ["compare"] = ["{home}", "--step", "1"],
        ["record"] = [],
        ["fit"] = [],
    };

    private static readonly Dictionary<string, string[]> WithoutHome = new(StringComparer.Ordinal)
    {
        ["new"] = ["{out}", "--like", "semi-detached"],
        ["import"] = [Drawing, "--length", "tape=4.00", "--out", "{out}"],
        ["loss"] = ["--list"],
    };

    public static TheoryData<string, string> Runs => [.. from command in OnHomes.Keys from home in Homes select (command, home)];

    public static TheoryData<string> Commands => [.. MeshSimCommand.Make(new() { Output = TextWriter.Null, Error = TextWriter.Null }).Subcommands.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Runs))]
    public async Task What_a_command_says_of_a_home_fits(string command, string home)
    {
        using var folder = new TemporaryFolder();
        Run run = await Run.Of([command, home, .. OnHomes[command].Select(arg => Filled(arg, home, folder))]);

        // Some homes have no readings or one network alone: then the command refuses, and there is nothing to measure.
        run.Code.Should().BeLessThanOrEqualTo((int)ExitCode.BadInput, run.Error);
        (run.Output.Length > 0).Should().Be(run.Code != (int)ExitCode.BadInput, run.Error);
        Fits(run.Output);
    }

    [Theory]
    [InlineData("new")]
    [InlineData("import")]
    [InlineData("loss")]
    public async Task What_a_command_without_a_home_says_fits(string command)
    {
        using var folder = new TemporaryFolder();
        Run run = await Run.Of([command, .. WithoutHome[command].Select(arg => Filled(arg, "", folder))]);

        run.Code.Should().Be(0, run.Error);
        Fits(run.Output);
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void Every_command_is_measured(string command) =>
        OnHomes.Keys.Concat(WithoutHome.Keys).Should().Contain(command);

    [Theory]
    [MemberData(nameof(Commands))]
    public async Task Help_fits_but_for_an_example_that_must_stay_in_one_piece(string command)
    {
        Run run = await Run.Of(command, "--help");

        Fits(string.Join('\n', run.Output.Split('\n').Where(line => !line.StartsWith("  meshsim ", StringComparison.Ordinal))));
    }

    [Fact]
    public async Task The_first_help_fits() => Fits((await Run.Of("--help")).Output);

    private static void Fits(string text) =>
        text.Split('\n').Should().OnlyContain(line => line.Length <= Terminal.PipedWidth && !line.Contains('\u001b'));

    private static string Filled(string arg, string home, TemporaryFolder folder) => arg
        .Replace("{out}", folder["out"], StringComparison.Ordinal)
        .Replace("{home}", home, StringComparison.Ordinal)
        .Replace("{device}", home.Length == 0 ? "" : SecondDevice(home), StringComparison.Ordinal);

    /// <summary>The first field of the second device listed: the first is the coordinator, of which there is little to say.</summary>
    private static string SecondDevice(string home) => File.ReadLines(Path.Combine(home, "devices.csv"))
        .Where(line => line.Length > 0 && line[0] != '#').Skip(2).First().Split(',')[0];
}
