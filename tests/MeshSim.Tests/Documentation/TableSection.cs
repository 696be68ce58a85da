using System.Globalization;
using System.Text;

namespace MeshSim.Tests.Documentation;

/// <summary>The part of the page about one table. Numbers are printed so that the last bits of a processor do not show.</summary>
public static class TableSection
{
    /// <summary>Of ours; the tables print two more, which rounding could turn over.</summary>
    private const string OurDigits = "g10";

    /// <summary>Errors are printed as powers of ten, and none smaller than this: below it lies rounding.</summary>
    private const int SmallestPower = -12;

    /// <summary>Sampled rows, spread by the golden ratio so that they do not keep step with the order of a table.</summary>
    private const int Samples = 5;

    private const double GoldenRatio = 0.6180339887498949;

    public static void Append(StringBuilder page, PageTable table, DataNote note)
    {
        List<(PublishedRow Row, Comparison[] Comparisons)> rows =
            [.. table.Table.Rows.Select(row => (row, table.Table.Compare(row).ToArray())).Where(row => row.Item2.Length > 0)];
        page.Append(CultureInfo.InvariantCulture, $"\n### {table.Heading}\n\n`{note.File}`: {note.What}. **Source.** {note.Source}. **Numbers.** {note.Origin}.\n");
        page.Append(CultureInfo.InvariantCulture, $"**Test.** `{table.TestClass}`, {rows.Count} rows");
        page.Append(rows.Count == table.Table.Rows.Count ? ".\n" : FormattableString.Invariant($" of {table.Table.Rows.Count}.\n"));
        AppendErrors(page, [.. rows.SelectMany(row => row.Comparisons)]);
        AppendSamples(page, table.Table.Keys, rows);
    }

    private static void AppendErrors(StringBuilder page, List<Comparison> comparisons)
    {
        page.Append("\n| column | values | largest error | tolerance |\n|---|---:|---:|---|\n");
        foreach (IGrouping<string, Comparison> column in comparisons.GroupBy(comparison => comparison.Column))
        {
            string rules = string.Join("; ", column.Select(comparison => comparison.Rule).Distinct());
            page.Append(CultureInfo.InvariantCulture, $"| {column.Key} | {column.Count()} | {Bound(column)} | {rules} |\n");
        }
    }

    private static void AppendSamples(StringBuilder page, IReadOnlyList<string> keys, List<(PublishedRow Row, Comparison[] Comparisons)> rows)
    {
        page.Append(CultureInfo.InvariantCulture, $"\n| {string.Join(" | ", keys)} | column | expected | ours | difference |\n");
        page.Append(string.Concat(Enumerable.Repeat("|---", keys.Count))).Append("|---|---:|---:|---:|\n");
        foreach (int place in SampledPlaces(rows.Count))
        {
            (PublishedRow row, Comparison[] comparisons) = rows[place];
            Comparison first = comparisons[0];
            string about = string.Join(" | ", keys.Select(key => row[key]));
            page.Append(CultureInfo.InvariantCulture, $"| {about} | {first.Column} | {row[first.Column]} | {Ours(first)} | {Bound([first])} |\n");
        }
    }

    private static IEnumerable<int> SampledPlaces(int rowCount) =>
        Enumerable.Range(0, Samples).Select(i => (int)(rowCount * (i * GoldenRatio % 1))).Distinct().Order();

    /// <summary>The next power of ten above every error, or 0 where no difference is allowed.</summary>
    private static string Bound(IEnumerable<Comparison> comparisons)
    {
        if (comparisons.All(comparison => comparison.Allowed == 0)) return comparisons.All(comparison => comparison.Error == 0) ? "0" : "not met";
        double largest = comparisons.Max(comparison => comparison.Error);
        int power = largest == 0 ? SmallestPower : Math.Max(SmallestPower, (int)Math.Floor(Math.Log10(largest)) + 1);
        return FormattableString.Invariant($"< 1e{power}");
    }

    private static string Ours(Comparison comparison) =>
        Math.Abs(comparison.Ours) <= Math.Pow(10, SmallestPower) * comparison.Scale ? "0" : comparison.Ours.ToString(OurDigits, CultureInfo.InvariantCulture);
}
