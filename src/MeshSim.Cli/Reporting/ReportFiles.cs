using System.Collections.Immutable;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Studies;

namespace MeshSim.Cli.Reporting;

/// <summary>The files of a report folder.</summary>
internal static class ReportFiles
{
    /// <summary>The page to open.</summary>
    public const string Page = "index.html";

    /// <summary>Every pair with every item of its loss.</summary>
    public const string Links = "links.json";

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
                folder.Add(content.Names.Picture(map), Pictures.Margin(answer, map));
            }
        }

        step("Page");
        folder.Add(Links, JsonText.Of(answers.Select(answer => LinksJson.Of(answer.Coverage)).ToList()));
        folder.Add(Routes, JsonText.Of(answers.Select(answer => RoutesJson.Of(answer.Coverage)).ToList()));
        folder.Add(Repeaters, JsonText.Of(answers.Select(answer => RepeatersJson.Of(answer.Coverage, answer.Placement)).ToList()));
        folder.Add(Maps, JsonText.Of(answers.SelectMany(answer => answer.Maps.Select(map =>
            MapJson.Of(answer.Coverage, map, content.Options, content.Names.Picture(map)))).ToList()));
        folder.Add(Page, ReportPage.Of(content));
    }
}
