using System.Collections.Immutable;
using System.Text;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Drawing;

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
    public static void Fill(StagedFolder folder, ReportContent content, Action<string> step, CancellationToken stopping)
    {
        // The page takes longest, so it comes first.
        ImmutableArray<Func<(string Name, byte[] Content)>> files = [PageOf(content, step), .. Pictures(content, step), .. Figures(content)];
        foreach ((string name, byte[] bytes) in SideBySide.Of(files, make => make(), stopping)) folder.Add(name, bytes);
    }

    private static Func<(string Name, byte[] Content)> PageOf(ReportContent content, Action<string> step) => Text(Page, () =>
    {
        step("Page");
        return ReportPage.Of(content);
    });

    private static IEnumerable<Func<(string Name, byte[] Content)>> Pictures(ReportContent content, Action<string> step) =>
        from answer in content.Answers
        from map in answer.Maps
        select (Func<(string, byte[])>)(() =>
        {
            step($"Picture of {map.Network}, {map.Storey}");
            return (content.Names.Picture(map), MarginPicture.Png(answer.Coverage, map, answer.Placement, PictureSize.Default));
        });

    private static IEnumerable<Func<(string Name, byte[] Content)>> Figures(ReportContent content)
    {
        ImmutableArray<NetworkAnswer> answers = content.Answers;
        yield return Text(Links, () => JsonText.OfEach(answers.Select(answer => LinksJson.Of(answer.Coverage))));
        yield return Text(Routes, () => JsonText.OfEach(answers.Select(answer => RoutesJson.Of(answer.Coverage))));
        yield return Text(Repeaters, () => JsonText.OfEach(answers.Select(answer => RepeatersJson.Of(answer.Coverage, answer.Placement, review: answer.Review))));
        yield return Text(Maps, () => JsonText.OfEach(
            from answer in answers
            from map in answer.Maps
            select MapJson.Of(answer.Coverage, map, content.Options, content.Names.Picture(map))));
    }

    private static Func<(string Name, byte[] Content)> Text(string name, Func<string> text) => () => (name, Encoding.UTF8.GetBytes(text()));
}
