using System.Net;
using System.Text;
using MeshSim.Cli.Tables;

namespace MeshSim.Cli.Reporting;

/// <summary>The few kinds of HTML that a report is made of. Every text goes through <see cref="Text"/>.</summary>
internal static class Html
{
    /// <summary>Text that means nothing but itself.</summary>
    public static string Text(string text) => WebUtility.HtmlEncode(text);

    /// <summary>A paragraph.</summary>
    /// <param name="text">Plain text.</param>
    /// <param name="kind">Its class in the style sheet; empty for running text.</param>
    public static string Paragraph(string text, string kind = "") =>
        kind.Length == 0 ? $"<p>{Text(text)}</p>\n" : $"<p class=\"{kind}\">{Text(text)}</p>\n";

    /// <summary>A list of plain texts.</summary>
    public static string List(IEnumerable<string> items) => $"<ul>\n{string.Concat(items.Select(item => $"<li>{Text(item)}</li>\n"))}</ul>\n";

    /// <summary>A chapter with its heading.</summary>
    /// <param name="id">Where a link leads.</param>
    /// <param name="heading">Plain text.</param>
    /// <param name="body">HTML.</param>
    public static string Section(string id, string heading, string body) => $"<section id=\"{id}\">\n<h2>{Text(heading)}</h2>\n{body}</section>\n";

    /// <summary>A picture with what it shows; it opens by itself, to be enlarged on a small screen.</summary>
    /// <param name="file">A file beside the page.</param>
    /// <param name="caption">Plain text, also read out to those who do not see the picture.</param>
    public static string Figure(string file, string caption) =>
        $"<figure>\n<a href=\"{Text(file)}\"><img src=\"{Text(file)}\" alt=\"{Text(caption)}\"></a>\n"
        + $"<figcaption>{Text(caption)}</figcaption>\n</figure>\n";

    /// <summary>A table with its notes. A table wider than the screen scrolls by itself.</summary>
    public static string Table(Table table)
    {
        var html = new StringBuilder("<div class=\"scroll\"><table>\n<thead><tr>");
        foreach (Column column in table.Columns) html.Append(Cell("th", column.Heading, column.IsNumber));
        html.Append("</tr></thead>\n<tbody>\n");
        foreach (IReadOnlyList<string> row in table.Rows)
            html.Append("<tr>").AppendJoin("", row.Select((cell, c) => Cell("td", cell, table.Columns[c].IsNumber))).Append("</tr>\n");
        html.Append("</tbody></table></div>\n");
        foreach (string note in table.Notes) html.Append(Paragraph(note, "note"));
        return html.ToString();
    }

    private static string Cell(string tag, string text, bool isNumber) =>
        isNumber ? $"<{tag} class=\"number\">{Text(text)}</{tag}>" : $"<{tag}>{Text(text)}</{tag}>";
}
