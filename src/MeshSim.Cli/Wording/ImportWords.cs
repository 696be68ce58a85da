using System.Text;
using MeshSim.Cli.Tables;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Importing;

namespace MeshSim.Cli.Wording;

/// <summary>What an import is told in.</summary>
internal static class ImportWords
{
    private const int AccountColumns = 120;

    /// <summary>The first line.</summary>
    public static string Answer(ImportResult result, string folder)
    {
        Home home = result.Home!;
        string leftOut = result.LeftOut.IsEmpty
            ? "nothing was left out"
            : $"{Figures.Counted(result.LeftOut.Length, "thing")} of the drawing {(result.LeftOut.Length == 1 ? "was" : "were")} left out, each with its reason above and in import.txt";
        return $"{home.Name} is in {folder}: {Figures.Counted(home.FloorPlan.Storeys.Length, "storey")}, "
            + $"{Figures.Counted(home.FloorPlan.Storeys.Sum(storey => storey.Rooms.Length), "room")}, "
            + $"{Figures.Counted(home.FloorPlan.Storeys.Sum(storey => storey.Walls.Length), "wall")}, "
            + $"{Figures.Counted(home.Devices.Length, "device")}; {leftOut}.";
    }

    /// <summary>All of it, to keep beside the home.</summary>
    public static string Account(string drawing, ImportResult result)
    {
        StringBuilder text = new();
        text.Append("What became of ").Append(Path.GetFileName(drawing)).Append("\n\nTaken:\n\n").Append(TextTable.Render(ImportTables.Taken(result), AccountColumns));
        text.Append("\nHow:\n\n");
        foreach (string remark in result.Remarks) text.Append("- ").Append(remark).Append(".\n");
        text.Append("\nLeft out:\n\n");
        foreach (Diagnostic one in result.LeftOut)
            text.Append(FormattableString.Invariant($"- line {one.Line}, column {one.Column}: {one.Message}: {one.Help}.\n"));
        return text.Append(result.LeftOut.IsEmpty ? "- nothing.\n" : "").ToString();
    }
}
