using System.Collections.Immutable;
using CsvHelper;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Sources;

namespace MeshSim.Files.Tables;

/// <summary>
/// A table read from a CSV file, its fields separated by commas, semicolons or tabs, whichever the first line has most of; that line
/// names the columns, and every row is as wide as it.
/// </summary>
internal sealed class CsvTable
{
    private static readonly ImmutableArray<char> Separators = [',', ';', '\t'];

    private readonly Dictionary<string, int> columns = [];

    private CsvTable(SourceFile file)
    {
        File = file;
        ReadOnlySpan<byte> header = file.Bytes.AsSpan(0, file.Bytes.AsSpan().IndexOfAny((byte)'\n', (byte)'\r') is >= 0 and var end ? end : file.Bytes.Length);
        foreach (char separator in Separators)
            if (header.Count((byte)separator) > header.Count((byte)Separator)) Separator = separator;
    }

    /// <summary>The file that it was read from.</summary>
    public SourceFile File { get; }

    /// <summary>What stands between two fields.</summary>
    public char Separator { get; } = Separators[0];

    /// <summary>Whether a number with a decimal comma has been met, and said.</summary>
    public bool HasDecimalCommas { get; set; }

    /// <summary>Whether no row was left out.</summary>
    public bool IsComplete { get; private set; } = true;

    /// <summary>Its rows, those with the wrong number of fields left out.</summary>
    public List<CsvRow> Rows { get; } = [];

    /// <summary>Reads a table; null with an error when its header is not usable.</summary>
    /// <param name="file">The file.</param>
    /// <param name="required">Columns that must be there.</param>
    /// <param name="optional">Columns that may be there.</param>
    /// <param name="problems">Takes the errors.</param>
    /// <param name="names">What the columns are called there, where that is not as here.</param>
    public static CsvTable? Read(
        SourceFile file, ImmutableArray<string> required, ImmutableArray<string> optional, DiagnosticList problems, TableColumns? names = null)
    {
        CsvTable table = new(file);
        using CsvReader reader = CsvReader.Create(file.Bytes, new CsvReaderOptions
        {
            Separator = table.Separator,
            HasHeader = false,
            TrimWhitespace = true,
            TrackLineNumbers = true,
            MalformedData = CsvMalformedDataHandling.Skip,
            FieldCountMismatch = CsvFieldCountHandling.Allow,
            OnMalformedRecord = record => table.ReportMalformed(record, problems),
        });
        if (!reader.Read())
        {
            // A header that breaks the quoting rules has been reported and skipped already.
            if (!problems.HasErrorsIn(file.Name))
                problems.Error(
                    SourcePlace.StartOf(file.Name),
                    "the file is empty",
                    $"the first line names the columns: {string.Join(',', required.AddRange(optional))}");
            return null;
        }

        CsvRow header = RowOf(reader, table);
        if (!table.TakeHeader(header, required, optional, names ?? TableColumns.Usual, problems)) return null;

        while (reader.Read())
        {
            CsvRow row = RowOf(reader, table);
            if (row.IsBlank) continue;
            if (row.FieldCount == header.FieldCount)
            {
                table.Rows.Add(row);
                continue;
            }

            table.IsComplete = false;
            problems.Error(
                row.Place,
                FormattableString.Invariant($"the line has {row.FieldCount} fields, the header {header.FieldCount}"),
                $"one field per column, a point as decimal mark, text that holds {table.SeparatorWord} in quotes");
        }

        return table;
    }

    /// <summary>The position of a column, or -1 when the file does not have it.</summary>
    public int IndexOf(string column) => columns.GetValueOrDefault(column, -1);

    private static CsvRow RowOf(CsvReader reader, CsvTable table)
    {
        string[] fields = new string[reader.FieldCount];
        int[] starts = new int[reader.FieldCount];
        int start = checked((int)reader.ByteOffset);
        for (int i = 0; i < fields.Length; i++)
        {
            fields[i] = reader.GetString(i);
            starts[i] = start;
            start += reader.GetRawSpan(i).Length + 1;
        }

        return new(table, fields, starts);
    }

    private void ReportMalformed(CsvMalformedRecord record, DiagnosticList problems)
    {
        IsComplete = false;
        if (record.Reason == CsvMalformedReason.UnterminatedQuote)
            problems.Error(
                File.PlaceOf(OpenQuote(File.StartOfLine(checked((int)record.LineNumber)))),
                "a quote opens here and is never closed",
                "close it, or take it away");
        else
            problems.Error(
                File.PlaceOf(checked((int)record.ByteOffset)),
                "a quote stands inside a field",
                "put the whole field in quotes and double the quotes within");
    }

    /// <summary>The quote that is still open at the end of the file, for a record that begins at an offset.</summary>
    private int OpenQuote(int start)
    {
        int open = -1;
        for (int i = start; i < File.Bytes.Length; i++)
        {
            if (File.Bytes[i] != (byte)'"') continue;
            bool isDoubled = open >= 0 && i + 1 < File.Bytes.Length && File.Bytes[i + 1] == (byte)'"';
            if (isDoubled) i++;
            else open = open >= 0 ? -1 : i;
        }

        return open >= 0 ? open : start;
    }

    private string SeparatorWord => Separator switch { ',' => "a comma", ';' => "a semicolon", _ => "a tab" };

    private bool TakeHeader(CsvRow header, ImmutableArray<string> required, ImmutableArray<string> optional, TableColumns names, DiagnosticList problems)
    {
        bool isUsable = true;
        ImmutableArray<string> known = required.AddRange(optional);
        Dictionary<string, string> byName = new(names.Theirs);
        foreach (string column in known) byName.TryAdd(ColumnNames.Plain(column), column);
        for (int i = 0; i < header.FieldCount; i++)
        {
            string name = header.TextAt(i), plain = ColumnNames.Plain(name);
            if (names.Ignored.Contains(plain)) continue;
            bool isKnown = byName.TryGetValue(plain, out string? column);
            if (isKnown && columns.TryAdd(column!, i)) continue;
            isUsable = false;
            if (isKnown) problems.Error(header.PlaceAt(i), $"the column {KnownNames.Quote(name)} is there twice", "keep one");
            else
            {
                problems.Error(
                    header.PlaceAt(i),
                    $"unknown column {KnownNames.Quote(name)}",
                    KnownNames.Help(name, known, "columns") + $" (else say in {HomeFileNames.Columns} what it is)");
            }
        }

        foreach (string name in required.Where(name => !columns.ContainsKey(name)))
        {
            isUsable = false;
            problems.Error(
                header.Place,
                $"the column \"{name}\" is missing",
                $"add it to the first line; needed are {string.Join(", ", required)}");
        }

        return isUsable;
    }
}
