using System.CommandLine;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Files;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Importing;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>import</c>.</summary>
internal static class ImportWork
{
    /// <summary>The file beside the home that keeps what was taken and what was not.</summary>
    public const string AccountFile = "import.txt";

    /// <summary>Reads the drawing, writes the home folder, and says what became of every shape.</summary>
    public static ExitCode Run(ImportCommand shape, ParseResult parsed, Terminal terminal)
    {
        string drawing = parsed.GetRequiredValue(shape.Drawing), folder = parsed.GetRequiredValue(shape.Out);
        if (drawing.Length == 0) throw new InputException("error: DRAWING is empty; give the file");
        HomeTarget.Refuse(folder);
        ImportResult result = DrawingImport.Read(drawing, ImportRequest.Read(shape, parsed));
        foreach (Diagnostic notice in result.Notices) terminal.Error.Write($"{notice}\n");
        if (result.Home is not { } home) throw new InputException([.. result.Problems.Select(problem => problem.ToString())]);

        terminal.Stopping.ThrowIfCancellationRequested();
        string account = ImportWords.Account(drawing, result);
        Writing.To(folder, () =>
        {
            HomeWriter.Write(home, folder);
            File.WriteAllText(Path.Combine(folder, AccountFile), account);
        });
        ImportJson json = ImportJson.Of(result, folder);
        terminal.Output.Write(parsed.GetValue(shape.Json) ? JsonText.Of(json) : Text(result, folder, terminal.Width));
        return ExitCode.Done;
    }

    private static string Text(ImportResult result, string folder, int width) =>
        TextTable.Paragraph(ImportWords.Answer(result, folder), width) + "\n"
        + TextTable.Render(ImportTables.Taken(result), width) + "\n"
        + string.Concat(result.Remarks.Select(remark => TextTable.Paragraph($"- {remark}.", width))) + "\n"
        + TextTable.Paragraph($"Look at it: meshsim check {folder} --draw {folder}.png", width);
}
