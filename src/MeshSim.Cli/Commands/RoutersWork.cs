using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>routers</c>.</summary>
internal static class RoutersWork
{
    /// <summary>Computes and writes which mains devices carry the mesh.</summary>
    public static ExitCode Run(RoutersCommand shape, ParseResult parsed, Terminal terminal)
    {
        string? file = parsed.GetValue(shape.Out);
        Result.Refuse(file);
        StudyRequest request = StudyRequest.Read(shape.Study, parsed, terminal);
        ImmutableArray<NetworkRouters> answers = Steps.Show<ImmutableArray<NetworkRouters>>(terminal, request.Networks.Length, step =>
        [
            .. request.Networks.Select(network =>
            {
                step($"Routers of {network.Name}");
                return ResilienceStudy.Routers(request.Home, network, request.Options);
            }),
        ]);
        string result = parsed.GetValue(shape.Study.Json)
            ? JsonText.OfEach(answers.Select(RoutersJson.Of))
            : string.Join('\n', answers.Select(answer => Section(answer, terminal.Width)));
        Result.Write(terminal, file, result);
        return ExitCode.Done;
    }

    private static string Section(NetworkRouters answer, int width)
    {
        string duties = answer.Duties.IsEmpty ? "" : "\n" + TextTable.Render(RoutersTable.Duties(answer), width);
        string help = answer.NewRouters.IsEmpty ? "" : "\n" + TextTable.Render(RoutersTable.Help(answer), width);
        return TextTable.Paragraph(RouterWords.Answer(answer), width)
            + TextTable.Paragraph(RouterWords.Help(answer), width)
            + TextTable.Paragraph(CoverageWords.Basis(answer.Coverage), width)
            + duties + help;
    }
}
