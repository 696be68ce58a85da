using System.Reflection;
using MeshSim.Cli.Wording;

namespace MeshSim.Cli.Reporting;

/// <summary>
/// The page of a report: what to do first, then why, then the figures. It needs its own folder and nothing else: no
/// network, no script. It bears no date, so the same home makes the same bytes.
/// </summary>
internal static class ReportPage
{
    private static readonly (string Id, string Heading, Func<ReportContent, string> Body)[] Chapters =
    [
        ("answer", "What to do", AnswerChapter.Of),
        ("maps", "Where it is dark", MapsChapter.Of),
        ("routes", "How each device reaches its coordinator", FigureChapters.Routes),
        ("routers", "Who carries the mesh", ResilienceChapters.Routers),
        ("rehearsals", "What happens when something is off", ResilienceChapters.Rehearsals),
        ("links", "Who hears whom", FigureChapters.Links),
        ("air", "What the air allows", AirChapter.Of),
        ("outlets", "Outlets considered", FigureChapters.Outlets),
        ("assumptions", "What this rests on", AssumptionsChapter.Of),
        ("cautions", "Before anybody touches the mains", CautionsChapter.Of),
    ];

    /// <summary>The page as HTML.</summary>
    public static string Of(ReportContent content)
    {
        string title = $"{content.Home.Name}: radio coverage";
        string body = string.Concat(Chapters.Select(chapter => Html.Section(chapter.Id, chapter.Heading, chapter.Body(content))));
        string contents = string.Concat(Chapters.Select(chapter => $"<li><a href=\"#{chapter.Id}\">{Html.Text(chapter.Heading)}</a></li>\n"));
        return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>{Html.Text(title)}</title>
            <style>
            {Style()}</style>
            </head>
            <body>
            <h1>{Html.Text(title)}</h1>
            {Html.Paragraph(Basis(content), "basis")}<nav><ul>
            {contents}</ul></nav>
            {body}<footer><p>{Html.Text(Provenance())}</p></footer>
            </body>
            </html>

            """;
    }

    private static string Basis(ReportContent content)
    {
        string state = content.Options.State is { } s ? $"State of the house: {s.Name}" : "Everything on, every door closed";
        return $"{state}. Path-loss model: {ModelWords.Of(content.Options.Model)}.";
    }

    private static string Provenance() => $"Made by meshsim {typeof(ReportPage).Assembly.GetName().Version!.ToString(3)}.";

    private static string Style()
    {
        using Stream style = Assembly.GetExecutingAssembly().GetManifestResourceStream("report.css")!;
        using var reader = new StreamReader(style);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
