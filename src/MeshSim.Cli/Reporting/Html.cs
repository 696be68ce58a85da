using System.Net;

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

    /// <summary>A heading below a chapter's.</summary>
    public static string Heading(string text) => $"<h3>{Text(text)}</h3>\n";

    /// <summary>A chapter with its heading.</summary>
    /// <param name="id">Where a link leads.</param>
    /// <param name="heading">Plain text.</param>
    /// <param name="body">HTML.</param>
    public static string Section(string id, string heading, string body) => $"<section id=\"{id}\">\n<h2>{Text(heading)}</h2>\n{body}</section>\n";

    /// <summary>A picture with what it shows. One wider than the screen scrolls by itself.</summary>
    /// <param name="picture">An SVG element that says what it is to those who do not see it.</param>
    /// <param name="caption">Plain text.</param>
    /// <param name="kind">Its class in the style sheet.</param>
    public static string Figure(string picture, string caption, string kind) =>
        $"<figure class=\"{kind}\">\n<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"{Text(caption)}\">\n"
        + $"{picture}</div>\n<figcaption>{Text(caption)}</figcaption>\n</figure>\n";
}
