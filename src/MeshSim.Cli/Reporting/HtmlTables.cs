using System.Text;
using MeshSim.Cli.Tables;

namespace MeshSim.Cli.Reporting;

/// <summary>Writes the tables of one page. A note that several tables share stands below the first of them alone.</summary>
internal sealed class HtmlTables
{
    private readonly HashSet<string> told = new(StringComparer.Ordinal);

    /// <summary>
    /// A table with its caption and notes; notes alone where it has no rows. On a narrow screen each row becomes a card of lines
    /// that bear the headings; the roles are spelled out because a browser forgets that such cards are a table.
    /// </summary>
    public string Write(Table table, string caption) =>
        (table.Rows.IsEmpty ? "" : Rows(table, caption))
        + string.Concat(table.Notes.Where(told.Add).Select(note => Html.Paragraph(note, "note")));

    private static string Rows(Table table, string caption)
    {
        var html = new StringBuilder($"<table role=\"table\">\n<caption>{Html.Text(caption)}</caption>\n<thead role=\"rowgroup\"><tr role=\"row\">");
        foreach (Column column in table.Columns)
            html.Append($"<th scope=\"col\" role=\"columnheader\"{Number(column)}>{Html.Text(column.Heading)}</th>");
        html.Append("</tr></thead>\n<tbody role=\"rowgroup\">\n");
        foreach (IReadOnlyList<string> row in table.Rows)
        {
            html.Append($"<tr role=\"row\"><th scope=\"row\" role=\"rowheader\"{Number(table.Columns[0])}>{Html.Text(row[0])}</th>");
            for (int c = 1; c < row.Count; c++)
                html.Append($"<td role=\"cell\"{Number(table.Columns[c])} data-heading=\"{Html.Text(table.Columns[c].Heading)}\">{Html.Text(row[c])}</td>");
            html.Append("</tr>\n");
        }

        return html.Append("</tbody></table>\n").ToString();
    }

    private static string Number(Column column) => column.IsNumber ? " class=\"number\"" : "";
}
