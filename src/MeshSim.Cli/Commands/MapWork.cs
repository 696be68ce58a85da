using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Drawing;
using MeshSim.FloorPlans;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>map</c>.</summary>
internal static class MapWork
{
    /// <summary>Computes the maps, writes the shares of dark floor, and the pictures where a folder is given.</summary>
    public static ExitCode Run(MapCommand shape, ParseResult parsed, Terminal terminal)
    {
        using StagedAnswer staged = new(file: null, parsed.GetValue(shape.Out));
        StagedFolder? folder = staged.Pictures;
        StudyRequest request = StudyRequest.Read(shape.Study, parsed, terminal).On(shape.Grid, parsed);
        ImmutableArray<Storey> storeys = request.Storeys(parsed.GetValue(shape.Storey));
        var names = new PictureNames(request.Home);
        PictureFormat format = shape.Picture.Of(parsed);
        Dictionary<MarginMap, string> pictures = [];
        List<NetworkMaps> all = Steps.Show(terminal, Expected(shape, parsed, request, storeys.Length), step => request.Networks.Select(network =>
        {
            NetworkMaps maps = NetworkMaps.Of(request.Home, network, storeys, request.Options, step);
            if (folder is null) return maps;

            IEnumerable<MapPicture> drawn = parsed.GetValue(shape.OneSheet)
                ? MapPicture.OnSheets(maps, names, request.Options, format, step)
                : MapPicture.OfEach(maps, names, request.Options, format, step);
            foreach (MapPicture picture in drawn)
            {
                folder.Add(picture.Name, picture.File);
                foreach (MarginMap map in picture.Maps) pictures.Add(map, picture.Name);
            }

            if (parsed.GetValue(shape.Values)) folder.Add(names.Values(network.Name), GridCsv.Of(maps.Maps));
            return maps;
        }).ToList());

        bool json = parsed.GetValue(shape.Study.Json);
        staged.Write(terminal, json ? Json(all, request.Options, pictures) : Text(all, terminal.Width));
        return CoverageText.Code([.. all.Select(maps => maps.Coverage)]);
    }

    private static int Expected(MapCommand shape, ParseResult parsed, StudyRequest request, int storeys)
    {
        // A picture shows repeaters too, which are placed first.
        int pictures = parsed.GetValue(shape.Out) is null ? 0 : 1 + (parsed.GetValue(shape.OneSheet) ? 1 : storeys);
        return request.Networks.Length * (1 + storeys + pictures);
    }

    private static string Json(List<NetworkMaps> all, StudyOptions options, Dictionary<MarginMap, string> pictures)
    {
        IEnumerable<MapJson> maps =
            from network in all
            from map in network.Maps
            select MapJson.Of(network.Coverage, map, options, pictures.GetValueOrDefault(map));
        return JsonText.OfEach(maps);
    }

    private static string Text(List<NetworkMaps> all, int width) => string.Join('\n', all.Select(maps =>
        TextTable.Paragraph(DarkWords.Answer(maps.Maps), width)
        + TextTable.Paragraph(CoverageWords.Basis(maps.Coverage), width)
        + (maps.Maps.All(map => map.Rooms.IsEmpty) ? "" : "\n" + TextTable.Render(DarkRoomsTable.Of(maps.Maps), width))));
}
