using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Drawing;
using MeshSim.Drawing.PlanSheets;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>sheets</c>.</summary>
internal static class SheetsWork
{
    private const string FileEnding = ".pdf";

    /// <summary>Draws the sheets and says what is on which.</summary>
    public static ExitCode Run(SheetsCommand shape, ParseResult parsed, Terminal terminal)
    {
        string path = parsed.GetRequiredValue(shape.Out);
        using StagedFolder? folder = StagedFolder.UnlessFile(path, FileEnding);
        StudyRequest request = StudyRequest.Read(shape.Study, parsed, terminal);
        ImmutableArray<NetworkCoverage> coverages = Steps.Show<ImmutableArray<NetworkCoverage>>(terminal, request.Networks.Length, step =>
        [
            .. request.Networks.Select(network =>
            {
                step($"Routes of {network.Name}");
                return CoverageStudy.Run(request.Home, network, request.Options);
            }),
        ]);
        using PlanSheetSet set = SetOf(request, coverages, shape.OptionsOf(parsed));
        var names = new PictureNames(request.Home);
        if (folder is null) StagedFile.Write(path, set.Pdf());
        else Fill(folder, set, names);
        terminal.Output.Write(parsed.GetValue(shape.Study.Json)
            ? JsonText.Of(SheetsJson.Of(request.Home, coverages, set, folder is null ? null : names))
            : TextTable.Paragraph(SheetWords.Answer(set), terminal.Width) + "\n" + TextTable.Render(SheetsTable.Of(set), terminal.Width));
        terminal.Error.Write($"The sheets are in {path}\n");
        return ExitCode.Done;
    }

    /// <summary>What cannot be drawn is a matter of the home or the command line, not a fault.</summary>
    private static PlanSheetSet SetOf(StudyRequest request, ImmutableArray<NetworkCoverage> coverages, SheetOptions options) =>
        PlanSheetSet.WhyNot(request.Home, coverages, options) is { } reason
            ? throw new InputException($"error: {reason}")
            : new PlanSheetSet(request.Home, coverages, options);

    private static void Fill(StagedFolder folder, PlanSheetSet set, PictureNames names)
    {
        foreach (StoreySheets storey in set.Storeys) folder.Add(names.Sheets(storey.Storey), set.Pdf(storey.Storey));
        folder.Complete();
    }
}
