using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Documentation;

/// <summary>What the README beside a file of check values says of it.</summary>
/// <param name="File">Path below the Data folder, with slashes.</param>
/// <param name="What">What it is.</param>
/// <param name="Source">Where it is published.</param>
/// <param name="Origin">How the numbers came here: transcribed, from memory, computed.</param>
public sealed record DataNote(string File, string What, string Source, string Origin);

/// <summary>The notes of all READMEs below the Data folder.</summary>
public static class DataNotes
{
    public static string Folder { get; } = Path.Combine(SourceTree.Root, "tests", "MeshSim.Tests", "Data");

    public static IReadOnlyDictionary<string, DataNote> Read() =>
        Directory.EnumerateDirectories(Folder).SelectMany(ReadFolder).ToDictionary(note => note.File);

    private static IEnumerable<DataNote> ReadFolder(string folder)
    {
        foreach (string line in File.ReadAllLines(Path.Combine(folder, "README.md")))
        {
            string[] cells = [.. line.Split('|').Select(cell => cell.Trim())];
            if (cells is not ["", var file, var what, var source, var origin, ""]) continue;
            if (file.EndsWith(".csv", StringComparison.Ordinal)) yield return new($"{Path.GetFileName(folder)}/{file}", what, source, origin);
        }
    }
}
