using System.CommandLine;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Files;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>check</c>.</summary>
internal static class CheckWork
{
    /// <summary>Reads the home folder and says what was read.</summary>
    public static ExitCode Run(CheckCommand shape, ParseResult parsed, Terminal terminal)
    {
        string folder = parsed.GetRequiredValue(shape.Home);
        if (parsed.GetValue(shape.Draw) is { } file) Draw(file, folder, terminal);
        ReadHome read = ReadHome.From(folder, terminal);
        CheckJson check = CheckJson.Of(read.Home, read.Notices.Select(notice => notice.ToString()));
        terminal.Output.Write(parsed.GetValue(shape.Json) ? JsonText.Of(check) : Text(check, terminal.Width));
        return ExitCode.Done;
    }

    // A home with problems is drawn all the same: that is when a look at it helps most.
    private static void Draw(string file, string folder, Terminal terminal)
    {
        Result.Refuse(file);
        if (folder.Length > 0 && !PlanFile.Write(file, HomeFolder.Read(folder)))
            terminal.Error.Write($"{file}: notice: not drawn; nothing of the plan could be read\n");
    }

    private static string Text(CheckJson check, int width) =>
        TextTable.Paragraph(Answer(check), width) + "\n"
        + TextTable.Render(CheckTables.Storeys(check), width) + "\n"
        + TextTable.Render(CheckTables.Networks(check), width) + "\n"
        + TextTable.Paragraph(Outlets(check), width)
        + TextTable.Paragraph(States(check), width);

    private static string Answer(CheckJson check)
    {
        string notices = check.Notices.IsEmpty ? "" : $"; {Figures.Counted(check.Notices.Length, "notice")} to read";
        return $"{check.Home} is in order: {Figures.Counted(check.Storeys.Length, "storey")}, "
            + $"{Figures.Counted(check.Storeys.Sum(s => s.Rooms), "room")}, {Figures.Counted(check.Networks.Length, "network")}, "
            + $"{Figures.Counted(check.Networks.Sum(n => n.Devices), "device")}{notices}.";
    }

    private static string Outlets(CheckJson check)
    {
        if (check.OutletsAssumed > 0) return $"Outlets for repeaters: none listed, so {Figures.Count(check.OutletsAssumed)} are assumed along the walls.";
        return check.OutletsGiven == 0 && check.Storeys.All(storey => storey.Rooms == 0)
            ? "Outlets for repeaters: none listed, and none can be assumed where no rooms are drawn."
            : $"Outlets for repeaters: {Figures.Count(check.OutletsGiven)} listed.";
    }

    private static string States(CheckJson check) =>
        check.States.IsEmpty ? "States: none named." : $"States: {string.Join(", ", check.States)}.";
}
