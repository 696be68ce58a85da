using System.CommandLine;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Placement;
using MeshSim.Placement.Concessions;
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
        var answers = Steps.Show(terminal, request.Networks.Length, step => request.Networks.Select(network =>
        {
            step($"Placing repeaters of {network.Name}");
            NetworkCoverage coverage = CoverageStudy.Run(request.Home, network, request.Options);
            RepeaterPlacement placement = CoverageStudy.Repeaters(coverage, request.Options with { Goals = goals });
            RepeaterLadder? ladder = rungs is { } most ? LadderStudy.Run(coverage, most, request.Options) : null;
            if (!placement.ServesAll) step($"Trying what giving in would change for {network.Name}");
            Infeasibility? infeasible = placement.ServesAll ? null : ConcessionStudy.Run(coverage, request.Options with { Goals = goals });
            return (Coverage: coverage, Placement: placement, Ladder: ladder, Infeasible: infeasible);
        }).ToList());

        string result = parsed.GetValue(shape.Study.Json)
            ? JsonText.OfEach(answers.Select(answer => RepeatersJson.Of(answer.Coverage, answer.Placement, answer.Ladder, answer.Infeasible)))
            : string.Join('\n', answers.Select(answer => Section(answer.Coverage, answer.Placement, answer.Ladder, answer.Infeasible, terminal.Width)));
        Result.Write(terminal, file, result);
        return answers.All(answer => answer.Placement.ServesAll) ? ExitCode.Done : ExitCode.GoalNotMet;
    }

    private static string Section(NetworkCoverage coverage, RepeaterPlacement placement, RepeaterLadder? ladder, Infeasibility? infeasible, int width)
    {
        string text = TextTable.Paragraph(RepeaterWords.Answer(coverage, placement), width)
            + TextTable.Paragraph(CoverageWords.Basis(coverage), width);
        if (!placement.Repeaters.IsEmpty) text += "\n" + TextTable.Render(RepeatersTable.Of(placement), width);
        if (!placement.KeptOn.IsEmpty) text += "\n" + TextTable.Render(KeptTable.Of(placement), width);
        if (infeasible is not null) text += Giving(coverage, infeasible, width);
        return ladder is null ? text : text + "\n" + TextTable.Render(LadderTable.Of(ladder), width);
    }

    private static string Giving(NetworkCoverage coverage, Infeasibility infeasible, int width)
    {
        string text = infeasible.Obstacles.IsEmpty ? "" : "\n" + TextTable.Render(ConcessionTables.Obstacles(infeasible), width);
        return infeasible.Concessions.IsEmpty ? text : text + "\n" + TextTable.Render(ConcessionTables.Concessions(infeasible, coverage.DesignMargin), width);
    }
}
