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
        AppendHeadings(text, table.Columns, widths);
        AppendRow(text, [.. widths.Select(w => new string('-', w))], table.Columns, widths);
        foreach (ImmutableArray<string> row in table.Rows)
            AppendRow(text, row, table.Columns, widths);
        foreach (string note in table.Notes)
            text.Append(Paragraph(note, width));
        return text.ToString();
    }

    /// <summary>Running text, broken between words.</summary>
    public static string Paragraph(string text, int width) => string.Concat(Wrap(text, width).Select(line => line + "\n"));

    /// <summary>Running text with a dash before each item.</summary>
    public static string List(IEnumerable<string> items, int width)
    {
        const string Dash = "- ", Indent = "  ";
        return string.Concat(items.SelectMany(item => Wrap(item, width - Dash.Length).Select((line, i) => (i == 0 ? Dash : Indent) + line + "\n")));
    }

    private static int[] Widths(Table table, int width)
    {
        int count = table.Columns.Length;
        int[] widths = [.. Enumerable.Range(0, count).Select(c => Math.Max(WidestCell(table, c), table.Columns[c].Heading.Length))];
        int excess = widths.Sum() + (Gap * (count - 1)) - width;

        // What costs the reader least gives way first: a heading goes on two lines, then cells break between words, then ids at
        // their hyphens, then a heading goes on more lines, then anything breaks anywhere. The widest column gives, one character at
        // a time: at these sizes simplicity wins.
        excess = Narrow(widths, excess, c => Math.Max(WidestCell(table, c), OnTwoLines(table.Columns[c].Heading)));
        excess = Narrow(widths, excess, c => Broken(table, c, Words));
        excess = Narrow(widths, excess, c => Broken(table, c, text => Words(text).SelectMany(Parts)));
        excess = Narrow(widths, excess, c => table.Columns[c].IsNumber
            ? Math.Max(WidestCell(table, c), Longest(Words(table.Columns[c].Heading)))
            : Longest(Texts(table, c).SelectMany(Words).SelectMany(Parts)));
        Narrow(widths, excess, c => table.Columns[c].IsNumber ? widths[c] : NarrowestColumn);
        return widths;

        int Broken(Table table, int c, Func<string, IEnumerable<string>> pieces) => table.Columns[c].IsNumber
            ? widths[c]
            : Math.Max(Longest(table.Rows.SelectMany(row => pieces(row[c]))), OnTwoLines(table.Columns[c].Heading));
    }

    private static int WidestCell(Table table, int column) => table.Rows.Select(row => row[column].Length).DefaultIfEmpty().Max();

    private static IEnumerable<string> Texts(Table table, int column) => table.Rows.Select(row => row[column]).Append(table.Columns[column].Heading);

    private static int Longest(IEnumerable<string> texts) => texts.Select(text => text.Length).DefaultIfEmpty().Max();

    /// <summary>The narrowest column in which a heading takes no more than two lines.</summary>
    private static int OnTwoLines(string heading) =>
        Enumerable.Range(Longest(Words(heading)), heading.Length + 1).First(width => Wrap(heading, width).Take(3).Count() <= 2);

    private static string[] Words(string text) => text.Split(' ');

    /// <summary>A word broken after each of its hyphens.</summary>
    private static IEnumerable<string> Parts(string word)
    {
        string[] parts = word.Split('-');
        return parts.Select((part, i) => i < parts.Length - 1 ? part + "-" : part);
    }

    private static int Narrow(int[] widths, int excess, Func<int, int> least)
    {
        int[] floors = [.. widths.Select((_, c) => least(c))];
        for (; excess > 0; excess--)
        {
            int widest = Enumerable.Range(0, widths.Length).Where(c => widths[c] > floors[c]).OrderByDescending(c => widths[c]).FirstOrDefault(-1);
            if (widest < 0) break;
            widths[widest]--;
        }

        return excess;
    }

    /// <summary>Headings stand on the rule below them, however many lines each takes.</summary>
    private static void AppendHeadings(StringBuilder text, ImmutableArray<Column> columns, int[] widths)
    {
        string[][] headings = [.. columns.Select((column, c) => Wrap(column.Heading, widths[c]).ToArray())];
        int height = headings.Max(lines => lines.Length);
        for (int i = 0; i < height; i++)
        {
            int line = i;
            AppendRow(text, [.. headings.Select(lines => line - (height - lines.Length) is >= 0 and var l ? lines[l] : "")], columns, widths);
        }
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
            if (blank <= 0 && end <= 1) end = width; // A minus stays with its number.
            yield return rest[..end].TrimEnd();
            rest = blank > 0 ? rest[(blank + 1)..] : rest[end..];
        }

        yield return rest;
    }
}
