using System.Globalization;

namespace MeshSim.OpenData.Tests.Optimisation;

/// <summary>Where the solved instances lie and how their files are cut into numbers.</summary>
internal static class InstanceFiles
{
    private const string DataSet = "optimisation";

    /// <summary>The path of a file of the data set; the running test is skipped when the data set is not there.</summary>
    public static string Of(params string[] parts) => Path.Combine([DataFolders.Of(DataSet), .. parts]);

    /// <summary>The names of the instances in a folder, without the ending, in ordinal order.</summary>
    public static string[] NamesIn(string folder, string pattern) =>
    [
        .. Directory.EnumerateFiles(Of(folder), pattern)
            .Select(file => Path.GetFileNameWithoutExtension(file))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>All whole numbers of a file in reading order; where lines break means nothing.</summary>
    public static int[] Numbers(string file) =>
        [.. File.ReadAllText(file).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(Number)];

    /// <summary>A table of names and whole numbers, one pair a line under a heading.</summary>
    /// <param name="file">The file.</param>
    /// <param name="separator">What stands between the columns.</param>
    /// <param name="name">The column of the name, from 0.</param>
    /// <param name="value">The column of the number.</param>
    public static Dictionary<string, int> Table(string file, char separator, int name, int value) =>
        File.ReadLines(file)
            .Skip(1)
            .Select(line => line.Split(separator, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            .Where(cells => cells.Length > value)
            .ToDictionary(cells => cells[name], cells => Number(cells[value]), StringComparer.Ordinal);

    /// <summary>One whole number.</summary>
    public static int Number(string text) => int.Parse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
}
