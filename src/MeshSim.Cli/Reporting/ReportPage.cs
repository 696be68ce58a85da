using System.Reflection;
using MeshSim.Cli.Answers;
using MeshSim.Propagation;

namespace MeshSim.Cli.Reporting;

/// <summary>
/// The page of a report: what to do first, then each network, then what the figures rest on. It is one file that needs nothing
/// else: no network, and no script to be read; its script only sorts tables and switches layers of maps. It bears no date, so
/// the same home makes the same bytes.
/// </summary>
internal static class ReportPage
{
    private sealed record Chapter(string Id, string Heading, string Body);

    /// <summary>The page as HTML.</summary>
    public static string Of(ReportContent content)
    {
        string title = $"{content.Home.Name}: radio coverage";
        Chapter[] chapters = [.. ChaptersOf(content)];
        string body = string.Concat(chapters.Select(chapter => Html.Section(chapter.Id, chapter.Heading, chapter.Body)));
        string contents = string.Concat(chapters.Select(chapter => $"<li><a href=\"#{chapter.Id}\">{Html.Text(chapter.Heading)}</a></li>\n"));
        return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>{Html.Text(title)}</title>
            <style>
            {Resource("report.css")}</style>
            </head>
            <body>
            <header>
            <h1>{Html.Text(title)}</h1>
            {Html.Paragraph(Basis(content), "basis")}</header>
            <nav aria-label="Contents"><ol>
            {contents}</ol></nav>
            <main>
            {body}</main>
            <footer><p>{Html.Text(Provenance())}</p></footer>
            <script>
            {Resource("report.js")}</script>
            </body>
            </html>

            """;
    }

    private static IEnumerable<Chapter> ChaptersOf(ReportContent content)
    {
        var tables = new HtmlTables();
        var networks = new NetworkChapter(content, tables);
        yield return new("answer", "What to do", AnswerChapter.Of(content, tables));
        yield return new("reading", "How to read the maps", RoomsChapter.Legend(content));
        foreach ((int index, NetworkAnswer answer) in content.Answers.Index())
        {
            string id = FormattableString.Invariant($"network-{index + 1}");
            yield return new(id, $"{answer.Coverage.Network.Name}: {answer.Coverage.Network.Radio.Description}", networks.Of(answer, id + "-map"));
        }

        yield return new("rooms", "Room by room", RoomsChapter.Of(content, tables));
        yield return new("record", "Device record", DeviceRecordChapter.Of(content, tables));
        yield return new("outlets", "Outlets considered", OutletsChapter.Of(content, tables));
        yield return new("assumptions", "What this rests on", AssumptionsChapter.Of(content, tables));
        yield return new("cautions", "Before anybody touches the mains", CautionsChapter.Of(content));
    }

    private static string Basis(ReportContent content)
    {
        string state = content.Options.State is { } s ? $"State of the house: {s.Name}" : "Everything on, every door closed";
        return $"{state}. Path-loss model: {ModelNames.Of(content.Options.Model)}.";
    }

    private static string Provenance() => $"Made by meshsim {typeof(ReportPage).Assembly.GetName().Version!.ToString(3)}.";

    private static string Resource(string name)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
