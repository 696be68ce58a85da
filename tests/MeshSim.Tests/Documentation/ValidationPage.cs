using System.Globalization;
using System.Text;

namespace MeshSim.Tests.Documentation;

/// <summary>The text of docs/validation.md.</summary>
public static class ValidationPage
{
    public static string Write()
    {
        IReadOnlyDictionary<string, DataNote> notes = DataNotes.Read();
        var page = new StringBuilder();
        AppendHead(page);
        foreach ((string heading, PageTable[] tables) in ReproducedTables.Chapters)
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {heading}\n");
            foreach (PageTable table in tables) TableSection.Append(page, table, notes[table.Table.File]);
        }

        page.Append("\n## Properties\n\nWhere no table exists, random homes, stacks and networks show that what must hold does hold.\n");
        AppendTests(page, CheckedProperties.Groups);
        page.Append("\n## Reference libraries\n\nAnswers compared with those of open-source libraries on random input.\n");
        AppendTests(page, CheckedProperties.Libraries);
        return page.ToString();
    }

    private static void AppendHead(StringBuilder page)
    {
        int files = ReproducedTables.All.Select(table => table.Table.File).Distinct().Count();
        int values = ReproducedTables.All.Sum(table => table.Table.Rows.Sum(row => table.Table.Compare(row).Count()));
        string head = string.Create(CultureInfo.InvariantCulture, $"""
            # Validation

            Published and independently computed values beside ours: {values} values from {files} files. `ValidationPageTests` writes this
            page from the files and the comparisons that the other tests assert, and fails when the page is stale.

            These values check that formulas are computed as published. They do not say how well a formula describes a home.

            **Numbers.** *Transcribed*: copied from publications that quote the source, not from the source itself. *From memory*: nobody
            looked it up. *Computed*: from the published formula, with 40-digit arithmetic, independently of this program. Files lie in
            `tests/MeshSim.Tests/Data`, each folder with a README about its limits of use.

            **Errors** are shares of the value (of a field's magnitude for its real and imaginary parts, of the larger terms for
            differences and sums, of 4.34 dB at least for losses through walls), and absolute where the tolerance has a unit. They are
            given as the next power of ten above, 1e-12 at least. Tables print 12 digits, so up to 5e-12 is the rounding of the table.
            Ours is printed to 10 digits.

            **Tolerances.** *{Comparisons.PrintedRule}*: half a unit of the last of 12 printed digits, and 1e-13 for rounding.
            *1e-11 of the value*: the same and as much again, for what series and searches find. *{Comparisons.ExactRule}*: to the last bit.

            """);
        page.Append(head.ReplaceLineEndings("\n"));
    }

    private static void AppendTests(StringBuilder page, IReadOnlyList<(string Heading, (string TestClass, string Test)[] Tests)> groups)
    {
        foreach ((string heading, (string TestClass, string Test)[] tests) in groups)
        {
            page.Append(CultureInfo.InvariantCulture, $"\n### {heading}\n\n");
            foreach ((string testClass, string test) in tests)
                page.Append(CultureInfo.InvariantCulture, $"- `{testClass}.{test}`\n");
        }
    }
}
