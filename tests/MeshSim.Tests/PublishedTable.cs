using System.Globalization;
using System.Reflection;

namespace MeshSim.Tests;

/// <summary>A table of check values or a catalogue: names in the first line, one row per line after it. A bad row fails.</summary>
public sealed class PublishedTable
{
    private PublishedTable(string name, TextReader text)
    {
        string[] columns = [.. Split(text.ReadLine() ?? throw new InvalidDataException($"{name} is empty"))];
        for (int line = 2; text.ReadLine() is { } row; line++)
        {
            string[] fields = [.. Split(row)];
            if (fields.Length != columns.Length)
                throw new InvalidDataException(FormattableString.Invariant($"{name}({line}): {fields.Length} fields, not {columns.Length}"));
            Rows.Add(new($"{name}({line.ToString(CultureInfo.InvariantCulture)})", columns.Zip(fields).ToDictionary()));
        }
    }

    public List<PublishedRow> Rows { get; } = [];

    /// <summary>A file below the test project's Data folder.</summary>
    public static PublishedTable Read(string path)
    {
        using var reader = new StreamReader(Path.Combine(AppContext.BaseDirectory, "Data", path));
        return new(path, reader);
    }

    /// <summary>A catalogue as shipped inside the program.</summary>
    public static PublishedTable Catalogue(string name)
    {
        Stream stream = Assembly.Load("MeshSim.Files").GetManifestResourceStream("datasets/" + name)
            ?? throw new InvalidDataException($"no catalogue {name}");
        using var reader = new StreamReader(stream);
        return new(name, reader);
    }

    private static IEnumerable<string> Split(string line)
    {
        int start = 0;
        bool quoted = false;
        for (int i = 0; i <= line.Length; i++)
        {
            if (i < line.Length && line[i] == '"') quoted = !quoted;
            if (i < line.Length && (quoted || line[i] != ',')) continue;
            yield return line[start..i].Trim('"').Replace("\"\"", "\"", StringComparison.Ordinal);
            start = i + 1;
        }
    }
}

/// <summary>One row of a <see cref="PublishedTable"/>.</summary>
public sealed record PublishedRow(string Place, IReadOnlyDictionary<string, string> Fields)
{
    public string this[string column] => Fields[column];

    public double Number(string column) =>
        double.TryParse(Fields[column], NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            ? value
            : throw new InvalidDataException($"{Place}: {column} is \"{Fields[column]}\", not a number");

    public int Whole(string column) =>
        int.TryParse(Fields[column], NumberStyles.None, CultureInfo.InvariantCulture, out int value)
            ? value
            : throw new InvalidDataException($"{Place}: {column} is \"{Fields[column]}\", not a whole number");

    public bool Flag(string column) => Number(column) switch
    {
        0 => false,
        1 => true,
        _ => throw new InvalidDataException($"{Place}: {column} is neither 0 nor 1"),
    };

    public override string ToString() => Place;
}
