using MeshSim.Files.Diagnostics;

namespace MeshSim.Files.Tables;

/// <summary>One row of a table.</summary>
internal sealed class CsvRow
{
    private readonly CsvTable table;
    private readonly string[] fields;
    private readonly int[] starts;

    /// <summary>Makes a row.</summary>
    /// <param name="table">Its table.</param>
    /// <param name="fields">The values of its fields.</param>
    /// <param name="starts">Where each field begins in the file, bytes.</param>
    public CsvRow(CsvTable table, string[] fields, int[] starts)
    {
        this.table = table;
        this.fields = fields;
        this.starts = starts;
    }

    /// <summary>Its table.</summary>
    public CsvTable Table => table;

    /// <summary>Number of its fields.</summary>
    public int FieldCount => fields.Length;

    /// <summary>Whether nothing stands in it, as spreadsheets leave below a table.</summary>
    public bool IsBlank => fields.All(text => text.Length == 0);

    /// <summary>Where it begins.</summary>
    public SourcePlace Place => PlaceAt(0);

    /// <summary>Where its last field begins.</summary>
    public SourcePlace End => PlaceAt(fields.Length - 1);

    /// <summary>The text of a field.</summary>
    public string TextAt(int index) => fields[index];

    /// <summary>Where a field begins, spaces before it left out.</summary>
    public SourcePlace PlaceAt(int index)
    {
        byte[] bytes = table.File.Bytes;
        int start = starts[index];
        while (start < bytes.Length && bytes[start] is (byte)' ') start++;
        return table.File.PlaceOf(start);
    }

    /// <summary>The text of a column; "" when the file does not have it.</summary>
    public string this[string column] => table.IndexOf(column) is >= 0 and int index ? fields[index] : "";

    /// <summary>Where the field of a column begins; the row when the file does not have it.</summary>
    public SourcePlace PlaceOf(string column) => PlaceAt(Math.Max(0, table.IndexOf(column)));
}
