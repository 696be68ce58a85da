using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Reporting;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.FloorPlans;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>report</c>.</summary>
internal static class ReportWork
{
    private const string PageExtension = ".html";

    /// <summary>Makes the page, alone or in a folder with pictures and figures, and writes the answers of each network.</summary>
    public static ExitCode Run(ReportCommand shape, ParseResult parsed, Terminal terminal)
    {
        string path = parsed.GetRequiredValue(shape.Out);
        using StagedFolder? folder = StagedFolder.UnlessFile(path, PageExtension);
        bool isPage = folder is null;
        StudyRequest request = StudyRequest.Read(shape.Study, parsed, terminal).On(shape.Grid, parsed);
        ReportContent content = Steps.Show(terminal, Expected(request, isPage), step =>
        {
            ReportContent answered = Answered(request, step, terminal.Stopping);
            if (folder is null) StagedFile.Write(path, ReportPage.Of(answered));
            else ReportFiles.Fill(folder, answered, step, terminal.Stopping);
            return answered;
        });

        folder?.Complete();
        string page = isPage ? path : Path.Combine(path, ReportFiles.Page);
        bool json = parsed.GetValue(shape.Study.Json);
        terminal.Output.Write(json ? JsonText.Of(ReportJson.Of(request.Home, content.Answers, page)) : Text(content.Answers, page, terminal.Width));
        return CoverageText.Code([.. content.Answers.Select(answer => answer.Coverage)]);
    }

    /// <summary>Links, repeaters, their zones and routers of each network, its maps, and their pictures where a folder is filled. How many dropouts there
    /// are to explain shows only then.</summary>
    private static int Expected(StudyRequest request, bool isPage)
    {
        int storeys = request.Home.FloorPlan.Storeys.Length;
        return (request.Networks.Length * (4 + storeys + (isPage ? 0 : storeys))) + (isPage ? 0 : 1);
    }

    private static ReportContent Answered(StudyRequest request, Action<string> step, CancellationToken stopping)
    {
        ImmutableArray<Storey> storeys = request.Storeys(null);
        ImmutableArray<NetworkAnswer> answers = [];
        BandComparison? bands = null;
        Parallel.Invoke(
            new ParallelOptions { CancellationToken = stopping },
            () => answers = SideBySide.Of(request.Networks, network => NetworkAnswer.Of(request.Home, network, storeys, request.Options, step).Explained(request.Options, step), stopping),
            () => bands = Bands(request, step));
        ImmutableArray<string> notices = [.. request.Notices.Select(notice => notice.ToString())];
        return new(request.Home, notices, request.Options, answers) { Bands = bands };
    }

    /// <summary>Where both networks are asked for and the rooms can tell them apart.</summary>
    private static BandComparison? Bands(StudyRequest request, Action<string> step)
    {
        if (BandStudy.Default(request.Home) is not { } pair || !request.Networks.Contains(pair.First) || !request.Networks.Contains(pair.Second)) return null;
        step($"Comparing {pair.First.Name} with {pair.Second.Name}");
        return BandStudy.Compare(request.Home, pair.First, pair.Second, request.Options);
    }

    private static string Text(ImmutableArray<NetworkAnswer> answers, string page, int width) =>
        string.Concat(answers.Select(answer =>
            TextTable.Paragraph($"{answer.Coverage.Network.Name}: {CoverageWords.Answer(answer.Coverage)}", width)
            + TextTable.Paragraph(RepeaterWords.Whole(answer.Coverage, answer.Placement), width)
            + TextTable.Paragraph(DarkWords.Answer(answer.Maps), width) + "\n"))
        + $"Report: {page}\n";
}
