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
        PlacementGoals goals = shape.Goals.Of(parsed);
        int? rungs = (int?)parsed.GetValue(shape.Ladder);
        var answers = Steps.Show(terminal, step => request.Networks.Select(network =>
        {
            step($"Placing repeaters of {network.Name}");
            NetworkCoverage coverage = CoverageStudy.Run(request.Home, network, request.Options);
            RepeaterPlacement placement = CoverageStudy.Repeaters(coverage, request.Options with { Goals = goals });
            return (Coverage: coverage, Placement: placement, Ladder: rungs is { } most ? LadderStudy.Run(coverage, most, request.Options) : null);
        }).ToList());

        string result = parsed.GetValue(shape.Study.Json)
            ? JsonText.OfEach(answers.Select(answer => RepeatersJson.Of(answer.Coverage, answer.Placement, answer.Ladder)))
            : string.Join('\n', answers.Select(answer => Section(answer.Coverage, answer.Placement, answer.Ladder, terminal.Width)));
        Result.Write(terminal, file, result);
        return answers.All(answer => answer.Placement.ServesAll) ? ExitCode.Done : ExitCode.GoalNotMet;
    }

    private static string Section(NetworkCoverage coverage, RepeaterPlacement placement, RepeaterLadder? ladder, int width)
    {
        string text = TextTable.Paragraph(RepeaterWords.Answer(coverage, placement), width)
            + TextTable.Paragraph(CoverageWords.Basis(coverage), width);
        if (!placement.Repeaters.IsEmpty) text += "\n" + TextTable.Render(RepeatersTable.Of(placement), width);
        if (!placement.KeptOn.IsEmpty) text += "\n" + TextTable.Render(KeptTable.Of(placement), width);
        return ladder is null ? text : text + "\n" + TextTable.Render(LadderTable.Of(ladder), width);
    }
}
