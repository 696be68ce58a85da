using System.Collections.Immutable;
using System.Text;

namespace MeshSim.Cli.Tables;

/// <summary>Sets a table in plain text: columns two spaces apart, long cells wrapped so that no line exceeds the width.</summary>
internal static class TextTable
{
    private const int Gap = 2;
    private const int NarrowestColumn = 6;

    /// <summary>The table, each line ended by a line feed, no blanks at line ends, no control sequences.</summary>
    /// <param name="table">What to set.</param>
    /// <param name="width">Columns that a line may take. A table of many columns may need more.</param>
    public static string Render(Table table, int width)
    {
        int[] widths = Widths(table, width);
        var text = new StringBuilder();
        AppendRow(text, [.. table.Columns.Select(column => column.Heading)], table.Columns, widths);
        AppendRow(text, [.. widths.Select(w => new string('-', w))], table.Columns, widths);
        foreach (ImmutableArray<string> row in table.Rows)
            AppendRow(text, row, table.Columns, widths);
        foreach (string note in table.Notes)
            text.Append(Paragraph(note, width));
        return text.ToString();
    }

    /// <summary>Running text, broken between words.</summary>
    public static string Paragraph(string text, int width) => string.Concat(Wrap(text, width).Select(line => line + "\n"));

    private static int[] Widths(Table table, int width)
    {
        int[] widths =
            [.. table.Columns.Select((column, c) => table.Rows.Select(row => row[c].Length).Append(column.Heading.Length).Max())];
        int excess = widths.Sum() + (Gap * (widths.Length - 1)) - width;

        // The widest column of words gives way first, one character at a time: at these sizes simplicity wins.
        for (; excess > 0; excess--)
        {
            int widest = Enumerable.Range(0, widths.Length).Where(c => !table.Columns[c].IsNumber).MaxBy(c => widths[c]);
            if (widths[widest] <= NarrowestColumn) break;
            widths[widest]--;
        }

        return widths;
    }

    private static void AppendRow(StringBuilder text, ImmutableArray<string> cells, ImmutableArray<Column> columns, int[] widths)
    {
        string[][] lines = [.. cells.Select((cell, c) => Wrap(cell, widths[c]).ToArray())];
        for (int i = 0; i < lines.Max(cell => cell.Length); i++)
        {
            IEnumerable<string> parts = lines.Select((cell, c) => Pad(i < cell.Length ? cell[i] : "", widths[c], columns[c].IsNumber));
            text.Append(string.Join(new string(' ', Gap), parts).TrimEnd()).Append('\n');
        }
    }

    private static string Pad(string cell, int width, bool right) => right ? cell.PadLeft(width) : cell.PadRight(width);

    private static IEnumerable<string> Wrap(string text, int width)
    {
        string rest = text;
        while (rest.Length > width)
        {
            int blank = rest.LastIndexOf(' ', width);
            int end = blank > 0 ? blank : rest.LastIndexOf('-', width - 1) + 1; // A long id breaks after one of its hyphens.
            if (end == 0) end = width;
            yield return rest[..end].TrimEnd();
            rest = blank > 0 ? rest[(blank + 1)..] : rest[end..];
        }

        yield return rest;
    }
}
