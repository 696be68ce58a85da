namespace MeshSim.Cli;

/// <summary>Something that the caller gave cannot be used. Ends the run with <see cref="ExitCode.BadInput"/>.</summary>
/// <param name="lines">What is wrong, one problem a line, as it is shown.</param>
internal sealed class InputException(params IReadOnlyList<string> lines) : Exception(string.Join('\n', lines))
{
    /// <summary>What is wrong, one problem a line.</summary>
    public IReadOnlyList<string> Lines { get; } = lines;
}
