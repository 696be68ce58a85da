using System.Collections.Immutable;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Drawing;
using MeshSim.Studies;

namespace MeshSim.Cli.Reporting;

/// <summary>The files of a report folder.</summary>
internal static class ReportFiles
{
    /// <summary>The page to open.</summary>
    public const string Page = "index.html";

    private const string Links = "links.json";
    private const string Routes = "routes.json";
    private const string Repeaters = "repeaters.json";
    private const string Maps = "map.json";

    /// <summary>Fills a folder; names each step as it begins.</summary>
    public static void Fill(StagedFolder folder, ReportContent content, Action<string> step)
    {
        ImmutableArray<NetworkAnswer> answers = content.Answers;
        foreach (NetworkAnswer answer in answers)
        {
            foreach (MarginMap map in answer.Maps)
            {
                step($"Picture of {map.Network}, {map.Storey}");
                folder.Add(content.Names.Picture(map), MarginPicture.Png(answer.Coverage, map, answer.Placement, PictureSize.Default));
            }
        }

        step("Page");
        folder.Add(Links, JsonText.OfEach(answers.Select(answer => LinksJson.Of(answer.Coverage))));
        folder.Add(Routes, JsonText.OfEach(answers.Select(answer => RoutesJson.Of(answer.Coverage))));
        folder.Add(Repeaters, JsonText.OfEach(answers.Select(answer => RepeatersJson.Of(answer.Coverage, answer.Placement, review: answer.Review))));
        folder.Add(Maps, JsonText.OfEach(
            from answer in answers
            from map in answer.Maps
            select MapJson.Of(answer.Coverage, map, content.Options, content.Names.Picture(map))));
        folder.Add(Page, ReportPage.Of(content));
    }
}
