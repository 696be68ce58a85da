using System.CommandLine;
using MeshSim.Drawing;

namespace MeshSim.Cli.Commands;

/// <summary>What kind of file pictures become.</summary>
/// <param name="folder">The option that asks for pictures.</param>
internal sealed class PictureArguments(string folder = "--out")
{
    private static readonly string[] All = ["png", "svg", "pdf"];

    private readonly Option<string> format = MakeFormat(folder);

    /// <summary>Adds the option to a command.</summary>
    public void AddTo(Command command) => command.Options.Add(format);

    /// <summary>The kind that the command line asks for.</summary>
    public PictureFormat Of(ParseResult parsed) => Enum.Parse<PictureFormat>(parsed.GetRequiredValue(format), ignoreCase: true);

    private static Option<string> MakeFormat(string folder)
    {
        var option = new Option<string>("--format")
        {
            Description = $"With {folder}, the kind of picture: {string.Join(", ", All)}",
            HelpName = "FORMAT",
            DefaultValueFactory = _ => All[0],
        };
        option.AcceptOnlyFromAmong(All);
        return option;
    }
}
