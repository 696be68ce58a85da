using System.Collections.Immutable;
using System.Reflection;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Sources;
using MeshSim.Files.Tables;

namespace MeshSim.Files.Datasets;

/// <summary>Reads the catalogues that are built into this assembly. They are ours, so a bad row is a fault of the program.</summary>
internal static class DatasetRows
{
    /// <summary>Reads every row of a catalogue.</summary>
    /// <param name="fileName">File in the folder <c>datasets</c>.</param>
    /// <param name="columns">All its columns.</param>
    /// <param name="read">Makes a value of a row, or null when the row has an error.</param>
    /// <exception cref="InvalidDataException">The catalogue is missing or has a bad row.</exception>
    public static ImmutableArray<T> Read<T>(string fileName, ImmutableArray<string> columns, Func<RowReader, DiagnosticList, T?> read)
        where T : class
    {
        string name = "datasets/" + fileName;
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
            ?? throw new InvalidDataException($"{name} is not built in");
        using MemoryStream content = new();
        stream.CopyTo(content);

        DiagnosticList problems = new([name]);
        CsvTable? table = SourceFile.FromBytes(name, content.ToArray(), problems) is { } file ? CsvTable.Read(file, columns, [], problems) : null;
        ImmutableArray<T> values = [.. (table?.Rows ?? []).Select(row => read(new(row, problems), problems)).OfType<T>()];
        if (problems.HasErrors) throw new InvalidDataException(string.Join(Environment.NewLine, problems.Sorted(Severity.Error)));
        return values;
    }
}
