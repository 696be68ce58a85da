using System.CommandLine;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Tables;
using MeshSim.Devices;
using MeshSim.Files;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>new</c>.</summary>
internal static class NewWork
{
    /// <summary>Writes the template and says what to do with it.</summary>
    public static ExitCode Run(NewCommand shape, ParseResult parsed, Terminal terminal)
    {
        string folder = parsed.GetRequiredValue(shape.Folder), like = parsed.GetValue(shape.Like)!;
        HomeTarget.Refuse(folder);
        Writing.To(folder, () => HomeTemplates.Write(like, folder));
        Home home = ReadHome.From(folder, terminal).Home;
        terminal.Output.Write(parsed.GetValue(shape.Json) ? JsonText.Of(CheckJson.Of(home, [])) : Text(home, folder, like, terminal.Width));
        return ExitCode.Done;
    }

    private static string Text(Home home, string folder, string like, int width) =>
        TextTable.Paragraph($"{folder} holds a {like} to start with, \"{home.Name}\": change its measures to yours.", width) + "\n"
        + TextTable.Paragraph($"{HomeFileNames.Home} has rooms, walls, doors and windows; every line says what it is.", width)
        + TextTable.Paragraph($"{HomeFileNames.Devices} opens in a spreadsheet; one line a device.", width) + "\n"
        + TextTable.Paragraph($"Then: meshsim check {folder} --draw {folder}.png", width);
}
