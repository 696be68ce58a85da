using MeshSim.Files.Diagnostics;

namespace MeshSim.Files.Tables;

/// <summary>One row of a table.</summary>
internal sealed class CsvRow
{
    private readonly CsvTable _table;
    private readonly string[] _fields;
    private readonly int[] _starts;

    /// <summary>Makes a row.</summary>
    /// <param name="table">Its table.</param>
    /// <param name="fields">The values of its fields.</param>
    /// <param name="starts">Where each field begins in the file, bytes.</param>
    public CsvRow(CsvTable table, string[] fields, int[] starts)
    {
        _table = table;
        _fields = fields;
        _starts = starts;
    }

    /// <summary>Its table.</summary>
    public CsvTable Table => _table;

    /// <summary>Number of its fields.</summary>
    public int FieldCount => _fields.Length;

    /// <summary>Whether nothing stands in it, as spreadsheets leave below a table.</summary>
    public bool IsBlank => _fields.All(text => text.Length == 0);

    /// <summary>Where it begins.</summary>
    public SourcePlace Place => PlaceAt(0);

    /// <summary>Where its last field begins.</summary>
    public SourcePlace End => PlaceAt(_fields.Length - 1);

    /// <summary>The text of a field.</summary>
    public string TextAt(int index) => _fields[index];

    /// <summary>Where a field begins, spaces before it left out.</summary>
    public SourcePlace PlaceAt(int index)
    {
        byte[] bytes = _table.File.Bytes;
        int start = _starts[index];
        while (start < bytes.Length && bytes[start] is (byte)' ') start++;
        return _table.File.PlaceOf(start);
    }

    /// <summary>The text of a column; "" when the file does not have it.</summary>
    public string this[string column] => _table.IndexOf(column) is >= 0 and int index ? _fields[index] : "";

    /// <summary>Where the field of a column begins; the row when the file does not have it.</summary>
    public SourcePlace PlaceOf(string column) => PlaceAt(Math.Max(0, _table.IndexOf(column)));
}
