using System.Collections.Immutable;
using CsvHelper;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Sources;

namespace MeshSim.Files.Tables;

/// <summary>A table read from a CSV file: comma-separated, the first line naming the columns, every row as wide as that line.</summary>
internal sealed class CsvTable
{
    private readonly Dictionary<string, int> _columns = new(StringComparer.OrdinalIgnoreCase);

    private CsvTable(SourceFile file) => File = file;

    /// <summary>The file that it was read from.</summary>
    public SourceFile File { get; }

    /// <summary>Whether no row was left out.</summary>
    public bool IsComplete { get; private set; } = true;

    /// <summary>Its rows, those with the wrong number of fields left out.</summary>
    public List<CsvRow> Rows { get; } = [];

    /// <summary>Reads a table; null with an error when its header is not usable.</summary>
    /// <param name="file">The file.</param>
    /// <param name="required">Columns that must be there.</param>
    /// <param name="optional">Columns that may be there.</param>
    /// <param name="problems">Takes the errors.</param>
    public static CsvTable? Read(SourceFile file, ImmutableArray<string> required, ImmutableArray<string> optional, DiagnosticList problems)
    {
        CsvTable table = new(file);
        using CsvReader reader = CsvReader.Create(file.Bytes, new CsvReaderOptions
        {
            Separator = ',',
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
        if (!table.TakeHeader(header, required, optional, problems)) return null;

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
                "one field per column, a point as decimal mark, text that holds a comma in quotes");
        }

        return table;
    }

    /// <summary>The position of a column, or -1 when the file does not have it.</summary>
    public int IndexOf(string column) => _columns.GetValueOrDefault(column, -1);

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

    private bool TakeHeader(CsvRow header, ImmutableArray<string> required, ImmutableArray<string> optional, DiagnosticList problems)
    {
        if (header.FieldCount == 1 && header.TextAt(0).AsSpan().IndexOfAny(';', '\t') >= 0)
        {
            problems.Error(
                header.Place,
                "the columns are not separated by commas",
                "save the table as CSV with commas between the fields and points in the numbers");
            return false;
        }

        bool isUsable = true;
        ImmutableArray<string> known = required.AddRange(optional);
        for (int i = 0; i < header.FieldCount; i++)
        {
            string name = header.TextAt(i);
            bool isKnown = known.Contains(name, StringComparer.OrdinalIgnoreCase);
            if (isKnown && _columns.TryAdd(name, i)) continue;
            isUsable = false;
            if (isKnown) problems.Error(header.PlaceAt(i), $"the column {KnownNames.Quote(name)} is there twice", "keep one");
            else problems.Error(header.PlaceAt(i), $"unknown column {KnownNames.Quote(name)}", KnownNames.Help(name, known, "columns"));
        }

        foreach (string name in required.Where(name => !_columns.ContainsKey(name)))
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
