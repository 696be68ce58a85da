namespace MeshSim.Files.Diagnostics;

/// <summary>Where something stands in a file. The default is nowhere.</summary>
/// <param name="File">The file as it is printed.</param>
/// <param name="Line">From 1.</param>
/// <param name="Column">Character in the line, from 1.</param>
internal readonly record struct SourcePlace(string File, int Line, int Column)
{
    /// <summary>The first character of a file: for problems with the file as a whole.</summary>
    public static SourcePlace StartOf(string file) => new(file, 1, 1);
}
