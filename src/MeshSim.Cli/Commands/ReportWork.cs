using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Reporting;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>report</c>.</summary>
internal static class ReportWork
{
    /// <summary>Makes the folder, and writes the answers of each network.</summary>
    public static ExitCode Run(ReportCommand shape, ParseResult parsed, Terminal terminal)
    {
        string path = parsed.GetRequiredValue(shape.Out);
        using StagedFolder folder = new(path);
        StudyRequest request = StudyRequest.Read(shape.Study, parsed, terminal).On(shape.Grid, parsed);
        ImmutableArray<NetworkAnswer> answers = Steps.Show(terminal, step =>
        {
            ImmutableArray<NetworkAnswer> all =
                [.. request.Networks.Select(network => NetworkAnswer.Of(request.Home, network, request.Storeys(null), request.Options, step))];
            ImmutableArray<string> notices = [.. request.Notices.Select(notice => notice.ToString())];
            ReportFiles.Fill(folder, new(request.Home, notices, request.Options, all), step);
            return all;
        });

        folder.Complete();
        string page = Path.Combine(path, ReportFiles.Page);
        bool json = parsed.GetValue(shape.Study.Json);
        terminal.Output.Write(json ? JsonText.Of(ReportJson.Of(request.Home, answers, page)) : Text(answers, page, terminal.Width));
        return CoverageText.Code([.. answers.Select(answer => answer.Coverage)]);
    }

    private static string Text(ImmutableArray<NetworkAnswer> answers, string page, int width) =>
        string.Concat(answers.Select(answer =>
            TextTable.Paragraph($"{answer.Coverage.Network.Name}: {CoverageWords.Answer(answer.Coverage)}", width)
            + TextTable.Paragraph(RepeaterWords.Answer(answer.Coverage, answer.Placement), width)
            + TextTable.Paragraph(DarkWords.Answer(answer.Maps), width) + "\n"))
        + $"Report: {page}\n";
}
