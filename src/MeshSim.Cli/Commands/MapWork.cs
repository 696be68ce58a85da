using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.FloorPlans;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>map</c>.</summary>
internal static class MapWork
{
    /// <summary>Computes the maps, writes the shares of dark floor, and the pictures where a folder is given.</summary>
    public static ExitCode Run(MapCommand shape, ParseResult parsed, Terminal terminal)
    {
        string? path = parsed.GetValue(shape.Out);
        using StagedFolder? folder = path is null ? null : new(path);
        StudyRequest request = StudyRequest.Read(shape.Study, parsed, terminal).On(shape.Grid, parsed);
        ImmutableArray<Storey> storeys = request.Storeys(parsed.GetValue(shape.Storey));
        ImmutableArray<NetworkAnswer> answers = Steps.Show(terminal, step =>
        {
            ImmutableArray<NetworkAnswer> all = NetworkAnswer.All(request.Home, request.Networks, storeys, request.Options, step);
            if (folder is not null) Fill(folder, all, parsed.GetValue(shape.Values), step);
            return all;
        });

        folder?.Complete();
        terminal.Output.Write(parsed.GetValue(shape.Study.Json) ? Json(answers, request, folder) : Text(answers, terminal.Width));
        if (folder is not null) terminal.Error.Write($"Pictures are in {path}\n");
        return CoverageText.Code([.. answers.Select(answer => answer.Coverage)]);
    }

    private static void Fill(StagedFolder folder, ImmutableArray<NetworkAnswer> answers, bool values, Action<string> step)
    {
        var names = new PictureNames(answers);
        foreach (NetworkAnswer answer in answers)
        {
            foreach (MarginMap map in answer.Maps)
            {
                step($"Picture of {map.Network}, {map.Storey}");
                folder.Add(names.Picture(map), Pictures.Margin(answer, map));
            }

            if (values) folder.Add(names.Values(answer.Coverage.Network.Name), GridCsv.Of(answer.Maps));
        }
    }

    private static string Json(ImmutableArray<NetworkAnswer> answers, StudyRequest request, StagedFolder? folder)
    {
        var names = new PictureNames(answers);
        return JsonText.Of(answers.SelectMany(answer => answer.Maps.Select(map =>
            MapJson.Of(answer.Coverage, map, request.Options, folder is null ? null : names.Picture(map)))).ToList());
    }

    private static string Text(ImmutableArray<NetworkAnswer> answers, int width) => string.Join('\n', answers.Select(answer =>
        TextTable.Paragraph(DarkWords.Answer(answer.Maps), width)
        + TextTable.Paragraph(CoverageWords.Basis(answer.Coverage), width)
        + "\n" + TextTable.Render(DarkRoomsTable.Of(answer.Maps), width)));
}
