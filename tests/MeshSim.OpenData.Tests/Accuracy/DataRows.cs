using System.Globalization;
using System.Text.RegularExpressions;

namespace MeshSim.OpenData.Tests.Accuracy;

/// <summary>One row of a published table, its cells by the name of their column.</summary>
internal sealed class DataRow(IReadOnlyDictionary<string, string> cells)
{
    /// <summary>A text.</summary>
    public string this[string column] => cells[column];

    /// <summary>Whether the cell holds anything.</summary>
    public bool Has(string column) => cells[column].Length > 0;

    /// <summary>A number.</summary>
    public double Number(string column) => double.Parse(cells[column], NumberStyles.Float, CultureInfo.InvariantCulture);
}

/// <summary>Published tables with a heading, cells separated by commas; a cell with a comma stands in double quotes.</summary>
internal static partial class DataRows
{
    /// <summary>All rows in the order of the file; the running test is skipped when the data set is not there.</summary>
    /// <param name="dataSet">The folder of the data set.</param>
    /// <param name="file">The file in it.</param>
    public static IReadOnlyList<DataRow> Of(string dataSet, string file)
    {
        string[] lines = File.ReadAllLines(Path.Combine(DataFolders.Of(dataSet), file));
        string[] columns = CellsOf(lines[0]);
        return [.. lines.Skip(1).Select(line => new DataRow(columns.Zip(CellsOf(line)).ToDictionary(pair => pair.First, pair => pair.Second, StringComparer.Ordinal)))];
    }

    private static string[] CellsOf(string line) => [.. Cell().Matches(line).Select(match => match.Groups["cell"].Value.Trim().Trim('"'))];

    [GeneratedRegex("(?:^|,)(?<cell>\"[^\"]*\"|[^,]*)", RegexOptions.None, 1000)]
    private static partial Regex Cell();
}
