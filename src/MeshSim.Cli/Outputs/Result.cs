namespace MeshSim.Cli.Outputs;

/// <summary>Where the one result of a command goes: standard output, or a file.</summary>
internal static class Result
{
    /// <summary>Refuses a file that must not be written, before any work is done.</summary>
    /// <param name="file">The file, or null for standard output.</param>
    public static void Refuse(string? file)
    {
        if (file is not null) StagedFile.Refuse(file);
    }

    /// <summary>Writes a complete result.</summary>
    /// <param name="terminal">The streams.</param>
    /// <param name="file">The file, or null for standard output.</param>
    /// <param name="text">The result.</param>
    public static void Write(Terminal terminal, string? file, string text)
    {
        if (file is null) terminal.Output.Write(text);
        else StagedFile.Write(file, text);
    }
}
