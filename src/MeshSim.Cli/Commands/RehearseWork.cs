using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>rehearse</c>.</summary>
internal static class RehearseWork
{
    /// <summary>Plays every outage through and writes what it does.</summary>
    public static ExitCode Run(RehearseCommand shape, ParseResult parsed, Terminal terminal)
    {
        string? file = parsed.GetValue(shape.Out);
        Result.Refuse(file);
        StudyRequest request = StudyRequest.Read(shape.Study, parsed, terminal);
        RehearsalOptions asked = new()
        {
            Pairs = parsed.GetValue(shape.Pairs),
            Draws = (int)parsed.GetValue(shape.Draws),
            Seed = (ulong)parsed.GetValue(shape.Seed),
            Correlation = parsed.GetValue(shape.Correlation),
        };
        ImmutableArray<NetworkRehearsal> answers = Steps.Show<ImmutableArray<NetworkRehearsal>>(terminal, request.Networks.Length, step =>
        [
            .. request.Networks.Select(network =>
            {
                step($"Rehearsing {network.Name}");
                return ResilienceStudy.Rehearse(request.Home, network, request.Options, asked);
            }),
        ]);
        string result = parsed.GetValue(shape.Study.Json)
            ? JsonText.OfEach(answers.Select(RehearsalJson.Of))
            : string.Join('\n', answers.Select(answer => Section(answer, terminal.Width)));
        Result.Write(terminal, file, result);
        return answers.Any(answer => answer.Broken.Any()) ? ExitCode.GoalNotMet : ExitCode.Done;
    }

    private static string Section(NetworkRehearsal answer, int width)
    {
        string text = TextTable.Paragraph(OutageWords.Answer(answer), width) + TextTable.Paragraph(CoverageWords.Basis(answer.Coverage), width);
        if (!answer.Rehearsals.IsEmpty) text += "\n" + TextTable.Render(RehearsalTables.Kinds(answer), width);
        if (!RehearsalTables.Costly(answer).IsEmpty) text += "\n" + TextTable.Render(RehearsalTables.Outages(answer), width);
        return answer.Chances.IsEmpty ? text : text + "\n" + Chances(RehearsalTables.Chances(answer), width);
    }

    /// <summary>The notes alone say it all when every device is as good as always connected.</summary>
    private static string Chances(Table chances, int width) =>
        chances.Rows.IsEmpty ? string.Concat(chances.Notes.Select(note => TextTable.Paragraph(note, width))) : TextTable.Render(chances, width);
}
