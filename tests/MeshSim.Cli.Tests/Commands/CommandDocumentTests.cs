using System.CommandLine;
using System.CommandLine.Help;
using System.Text.RegularExpressions;
using MeshSim.Cli.Commands;

namespace MeshSim.Cli.Tests.Commands;

/// <summary>The page about the commands names what the parser knows, no more and no less.</summary>
public sealed partial class CommandDocumentTests
{
    private static readonly RootCommand Root = MeshSimCommand.Make(new() { Output = TextWriter.Null, Error = TextWriter.Null });

    private static readonly Dictionary<string, string> Sections = File.ReadAllText(Path.Combine(Run.Root, "docs", "commands.md"))
        .Split("\n## ")
        .ToDictionary(section => section[..section.IndexOf('\n', StringComparison.Ordinal)], StringComparer.Ordinal);

    public static TheoryData<string> Commands => [.. Root.Subcommands.Select(command => command.Name)];

    [Theory]
    [MemberData(nameof(Commands))]
    public void Each_command_is_documented_with_all_its_options(string name)
    {
        IEnumerable<string> known = Root.Subcommands.Single(command => command.Name == name).Options
            .Where(option => option is not HelpOption)
            .Select(option => option.Name);

        OptionsOf(Table(Sections[name])).Should().BeEquivalentTo(known);
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void Each_command_is_documented_with_the_example_of_its_help(string name)
    {
        var command = (IHasExample)Root.Subcommands.Single(command => command.Name == name);

        Sections[name].Should().Contain($"```\n{command.Example}\n```");
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public async Task Each_example_is_a_command_line_that_parses(string name)
    {
        var command = (IHasExample)Root.Subcommands.Single(command => command.Name == name);
        foreach (string line in command.Example.Split('\n'))
            Root.Parse(line["meshsim ".Length..]).Errors.Should().BeEmpty();
        (await Run.Of(name, "--help")).Code.Should().Be(0);
    }

    [Fact]
    public void Only_commands_that_exist_are_documented() =>
        Sections.Keys.Where(heading => char.IsLower(heading[0])).Should().BeEquivalentTo(Root.Subcommands.Select(command => command.Name));

    /// <summary>The first cell of each row.</summary>
    private static string Table(string section) =>
        string.Concat(section.Split('\n').Where(line => line.StartsWith("| `", StringComparison.Ordinal)).Select(line => line.Split('|')[1]));

    private static HashSet<string> OptionsOf(string text) => [.. OptionName().Matches(text).Select(match => match.Value)];

    [GeneratedRegex("--[a-z]+(?:-[a-z]+)*", RegexOptions.NonBacktracking)]
    private static partial Regex OptionName();
}
