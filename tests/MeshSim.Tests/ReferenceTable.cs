using System.Globalization;

namespace MeshSim.Tests;

/// <summary>A table of published or independently computed values beside the tests. A row that does not parse fails its test.</summary>
public sealed class ReferenceTable
{
    /// <summary>
    /// The tables print 12 significant digits: a printed value is within half a unit of the last one, 5e-12 of itself at most,
    /// and double arithmetic may add as much again.
    /// </summary>
    public const double PrintedDigits = 1e-11;

    private readonly string[] _columns;
    private readonly string[][] _rows;

    private ReferenceTable(string[] columns, string[][] rows) => (_columns, _rows) = (columns, rows);

    public static ReferenceTable Read(string name)
    {
        string[] lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Data", name));
        return new(Split(lines[0]), [.. lines.Skip(1).Select(Split)]);
    }

    /// <summary>The numbers of all rows, as theory data. The expected count fails a table that lost or gained a row.</summary>
    public TheoryData<int> Rows(int expectedCount)
    {
        _rows.Should().HaveCount(expectedCount);
        return [.. Enumerable.Range(0, _rows.Length)];
    }

    public string Text(int row, string column)
    {
        _rows[row].Should().HaveSameCount(_columns);
        int index = Array.IndexOf(_columns, column);
        index.Should().BeGreaterThanOrEqualTo(0, "the table has a column {0}", column);
        return _rows[row][index];
    }

    public double Number(int row, string column) => double.Parse(Text(row, column), NumberStyles.Float, CultureInfo.InvariantCulture);

    public int Whole(int row, string column) => int.Parse(Text(row, column), NumberStyles.None, CultureInfo.InvariantCulture);

    /// <summary>Compares with a printed value to <see cref="PrintedDigits"/> of it.</summary>
    public void ShouldPrint(int row, string column, double actual)
    {
        double expected = Number(row, column);
        actual.Should().BeApproximately(expected, PrintedDigits * Math.Abs(expected), "row {0} prints {1} as {2}", row + 1, column, expected);
    }

    private static string[] Split(string line)
    {
        var cells = new List<string>();
        var cell = new System.Text.StringBuilder();
        bool quoted = false;
        foreach (char c in line)
        {
            if (c == '"') quoted = !quoted;
            else if (c == ',' && !quoted) Finish();
            else cell.Append(c);
        }

        Finish();
        return [.. cells];

        void Finish()
        {
            cells.Add(cell.ToString());
            cell.Clear();
        }
    }
}
