namespace MeshSim.Cli.Outputs;

/// <summary>
/// What a command hands over when all of its work is done: one text, to standard output or a file, and a folder of pictures where one
/// was asked for. Places that must not be written are refused before any work is done, and nothing is left behind where it fails.
/// </summary>
internal sealed class StagedAnswer : IDisposable
{
    private readonly string? file;
    private readonly string? pictures;

    /// <summary>Makes ready.</summary>
    /// <param name="file">Where the text goes; null for standard output.</param>
    /// <param name="pictures">Where pictures go; null for none.</param>
    /// <exception cref="InputException">One of them must not be written.</exception>
    public StagedAnswer(string? file, string? pictures)
    {
        (this.file, this.pictures) = (file, pictures);
        Result.Refuse(file);
        Pictures = pictures is null ? null : new(pictures);
    }

    /// <summary>The folder to fill; null when no pictures are wanted.</summary>
    public StagedFolder? Pictures { get; }

    /// <summary>Moves the pictures into place, writes the text, and says where the pictures are, or that there are none.</summary>
    public void Write(Terminal terminal, string text)
    {
        Pictures?.Complete();
        Result.Write(terminal, file, text);
        if (Pictures is { } folder) terminal.Error.Write(folder.IsEmpty ? $"There is nothing to draw: {pictures} holds no picture\n" : $"The pictures are in {pictures}\n");
    }

    /// <inheritdoc/>
    public void Dispose() => Pictures?.Dispose();
}
