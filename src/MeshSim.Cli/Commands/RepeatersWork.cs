using System.CommandLine;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>repeaters</c>.</summary>
internal static class RepeatersWork
{
    /// <summary>Computes and writes where repeaters should go.</summary>
    public static ExitCode Run(RepeatersCommand shape, ParseResult parsed, Terminal terminal)
    {
        string? file = parsed.GetValue(shape.Out);
        Result.Refuse(file);
        StudyRequest request = StudyRequest.Read(shape.Study, parsed, terminal);
        PlacementGoals goals = new() { Ways = (int)parsed.GetValue(shape.Ways), HoldStates = parsed.GetValue(shape.HoldStates) };
        var answers = Steps.Show(terminal, step => request.Networks.Select(network =>
        {
            step($"Placing repeaters of {network.Name}");
            NetworkCoverage coverage = CoverageStudy.Run(request.Home, network, request.Options);
            return (Coverage: coverage, Placement: CoverageStudy.Repeaters(coverage, request.Options with { Goals = goals }));
        }).ToList());

        string result = parsed.GetValue(shape.Study.Json)
            ? JsonText.OfEach(answers.Select(answer => RepeatersJson.Of(answer.Coverage, answer.Placement)))
            : string.Join('\n', answers.Select(answer => Section(answer.Coverage, answer.Placement, terminal.Width)));
        Result.Write(terminal, file, result);
        return answers.All(answer => answer.Placement.ServesAll) ? ExitCode.Done : ExitCode.GoalNotMet;
    }

    private static string Section(NetworkCoverage coverage, RepeaterPlacement placement, int width)
    {
        string answer = TextTable.Paragraph(RepeaterWords.Answer(coverage, placement), width)
            + TextTable.Paragraph(CoverageWords.Basis(coverage), width);
        return placement.Repeaters.IsEmpty ? answer : answer + "\n" + TextTable.Render(RepeatersTable.Of(placement), width);
    }
}
