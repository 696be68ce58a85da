using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Sources;
using MeshSim.Files.Yaml;

namespace MeshSim.Files.Tables;

/// <summary>What the columns of one table are called there.</summary>
/// <param name="Theirs">The name in the table, compared as <see cref="ColumnNames.Plain"/> makes it, by the column that it is.</param>
/// <param name="Ignored">Columns that mean nothing here, in the same form.</param>
internal sealed record TableColumns(ImmutableDictionary<string, string> Theirs, ImmutableHashSet<string> Ignored)
{
    /// <summary>No other names than the usual ones.</summary>
    public static readonly TableColumns Usual = new(ImmutableDictionary<string, string>.Empty, []);
}

/// <summary>Reads <c>columns.yaml</c>: what the columns of the tables are called in a person's own spreadsheet.</summary>
internal sealed class ColumnNames
{
    private const string Ignore = "ignore";

    private static readonly ImmutableSortedDictionary<string, ImmutableArray<string>> Columns = new Dictionary<string, ImmutableArray<string>>
    {
        [HomeFileNames.Devices] = DeviceTable.Required.AddRange(DeviceTable.Optional),
        [HomeFileNames.Outlets] = OutletTable.Required.AddRange(OutletTable.Optional),
        [HomeFileNames.Readings] = ReadingTable.Required.AddRange(ReadingTable.Optional),
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    private readonly Dictionary<string, TableColumns> tables = [];

    /// <summary>The names in a table.</summary>
    /// <param name="file">The table: the name of its file decides.</param>
    public TableColumns For(SourceFile file) => tables.GetValueOrDefault(Path.GetFileName(file.Name), TableColumns.Usual);

    /// <summary>A name as it is compared: neither capitals, spaces, hyphens nor underscores make a difference.</summary>
    public static string Plain(string name) =>
        string.Concat(name.Where(c => c is not ('_' or '-') && !char.IsWhiteSpace(c))).ToUpperInvariant();

    /// <summary>Reads the names; what cannot be read has its error and no effect.</summary>
    public static ColumnNames Read(SourceFile file, DiagnosticList problems)
    {
        ColumnNames names = new();
        if (YamlTree.Parse(file, problems) is not { } root) return names;
        if (MapReader.Open(root, "a list of column names", problems, [.. Columns.Keys]) is not { } map) return names;
        foreach ((string table, ImmutableArray<string> columns) in Columns)
            if (map.Find(table) is { } node && MapReader.Open(node, "a table", problems, [.. columns, Ignore]) is { } entries)
                names.tables[table] = Read(entries, columns, problems);
        return names;
    }

    private static TableColumns Read(MapReader entries, ImmutableArray<string> columns, DiagnosticList problems)
    {
        Dictionary<string, string> theirs = [];
        foreach (string column in columns)
        {
            if (entries.Text(column) is { } name && !theirs.TryAdd(Plain(name), column))
                problems.Error(entries.PlaceOf(column), $"the column {KnownNames.Quote(name)} cannot be two columns", $"it is {KnownNames.Quote(theirs[Plain(name)])} already");
        }

        return new(theirs.ToImmutableDictionary(), [.. entries.Names(Ignore).Select(name => Plain(name.Name))]);
    }
}
