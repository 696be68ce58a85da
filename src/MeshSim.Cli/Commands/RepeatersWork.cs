using System.CommandLine;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Placement;
using MeshSim.Placement.Concessions;
using MeshSim.Radio;
using MeshSim.Studies;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>repeaters</c>.</summary>
internal static class RepeatersWork
{
    /// <summary>Computes and writes where repeaters should go.</summary>
    public static ExitCode Run(RepeatersCommand shape, ParseResult parsed, Terminal terminal)
    {
        shape.Apply.Refuse(parsed);
        using StagedAnswer staged = new(parsed.GetValue(shape.Out), parsed.GetValue(shape.Maps));
        StudyRequest request = StudyRequest.Read(shape.Study, parsed, terminal);
        StudyOptions options = request.Options with { Goals = shape.Goals.Of(parsed) };
        int? rungs = (int?)parsed.GetValue(shape.Ladder);
        List<PlacedNetwork> answers = Steps.Show(terminal, 2 * request.Networks.Length, step => request.Networks.Select(network =>
        {
            step($"Placing repeaters of {network.Name}");
            PlacedNetwork answer = PlacedNetwork.Of(CoverageStudy.Run(request.Home, network, request.Options), options, shape.Chance.Of(parsed), rungs, step);
            if (staged.Pictures is { } folder) SitePictures.AddRepeaters(folder, answer, shape.Picture.Of(parsed), step);
            return answer;
        }).ToList());

        staged.Write(terminal, parsed.GetValue(shape.Study.Json)
            ? JsonText.OfEach(answers.Select(answer => RepeatersJson.Of(answer.Coverage, answer.Placement, answer.Ladder, answer.Infeasible, answer.Review)))
            : Text(answers, rungs is not null, terminal.Width));
        shape.Apply.Write(
            parsed, parsed.GetRequiredValue(shape.Study.Home), () => FollowedAdvice.With(request.AsRead, answers.Select(answer => answer.Placement)), terminal);
        return answers.All(answer => answer.Placement.ServesAll) ? ExitCode.Done : ExitCode.GoalNotMet;
    }

    /// <summary>A section for each network; what was asked is said once, where it means something: a star has one way to each device and no choice.</summary>
    private static string Text(List<PlacedNetwork> answers, bool climbs, int width)
    {
        PlacedNetwork? first = answers.Find(answer => answer.Coverage.Network.Radio.Topology == Topology.Mesh);
        return string.Join('\n', answers.Select(answer =>
            Section(answer, answer == first ? $". {GoalWords.Asked(answer.Placement.Goals, answer.Placement.StatesHeld)}" : "", width)
            + (climbs ? "\n" + Ladder(answer, width) : "")));
    }

    private static string Section(PlacedNetwork answer, string asked, int width)
    {
        (NetworkCoverage coverage, RepeaterPlacement placement) = (answer.Coverage, answer.Placement);
        string text = TextTable.Paragraph(RepeaterWords.Answer(coverage, placement), width)
            + TextTable.Paragraph(CoverageWords.Basis(coverage) + asked, width);
        if (!placement.Repeaters.IsEmpty) text += "\n" + TextTable.Render(RepeatersTable.Of(placement), width);
        if (!placement.KeptOn.IsEmpty) text += "\n" + TextTable.Render(KeptTable.Of(placement), width);
        text += Paragraphs(ReviewWords.Sites(placement, answer.Review), width);
        if (answer.Infeasible is { } infeasible) text += Giving(answer, infeasible, width);
        return text + Paragraphs(ReviewWords.Whole(answer.Review), width);
    }

    private static string Ladder(PlacedNetwork answer, int width) =>
        answer.Ladder is { } ladder ? TextTable.Render(LadderTable.Of(ladder), width) : TextTable.Paragraph(RepeaterWords.NoLadder(answer.Coverage), width);

    private static string Paragraphs(IEnumerable<string> sentences, int width) => string.Concat(sentences.Select(sentence => "\n" + TextTable.Paragraph(sentence, width)));

    /// <summary>What cannot be had and what giving in would bring. Where no outlet could ever help, the answer has said so.</summary>
    private static string Giving(PlacedNetwork answer, Infeasibility infeasible, int width)
    {
        string[] obstacles = [.. infeasible.Obstacles.IsEmpty ? ServedWords.Left(answer.Coverage, answer.Placement) : ConcessionWords.Obstacles(infeasible)];
        string text = obstacles.Length == 0 ? "" : "\n" + TextTable.Paragraph("What cannot be had, with one repeater to an outlet:", width) + TextTable.List(obstacles, width);
        if (infeasible.Obstacles.Any(obstacle => obstacle.Case.Lost is not null))
            text += TextTable.Paragraph(ServedWords.Advice(infeasible.Obstacles.Select(obstacle => obstacle.Case)), width);
        if (infeasible.Concessions.IsEmpty) return text;
        Table table = ConcessionTable.Of(infeasible, answer.Coverage.DesignMargin);
        return text + "\n" + (table.Rows.IsEmpty ? string.Concat(table.Notes.Select(note => TextTable.Paragraph(note, width))) : TextTable.Render(table, width));
    }
}
