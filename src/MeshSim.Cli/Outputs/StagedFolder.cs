namespace MeshSim.Cli.Outputs;

/// <summary>
/// An output folder that appears whole or not at all: it is filled beside its final place and moved there when complete.
/// An earlier output in that place is replaced by the move; anything else there is refused before the work begins.
/// </summary>
internal sealed class StagedFolder : IDisposable
{
    /// <summary>The file that lists what a run wrote. Only a folder that holds nothing else is replaced.</summary>
    public const string ListName = "made-by-meshsim.txt";

    private const string ListHeading = "# Written by meshsim, which replaces this folder as a whole. Keep files of your own elsewhere.";

    private readonly string path;
    private readonly string target;
    private readonly string staging;
    private readonly SortedSet<string> names = new(StringComparer.Ordinal);

    /// <summary>Makes ready to fill a folder.</summary>
    /// <param name="path">Its final place.</param>
    /// <exception cref="InputException">It is empty, or something is in that place that no earlier run wrote.</exception>
    public StagedFolder(string path)
    {
        if (path.Length == 0) throw new InputException("error: the name of a folder is empty; give the folder to make");
        this.path = path;
        target = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        Refuse(target);
        string parent = Path.GetDirectoryName(target) ?? throw new InputException($"{path}: error: cannot be replaced");
        staging = Path.Combine(parent, FormattableString.Invariant($".{Path.GetFileName(target)}.{Environment.ProcessId}.partial"));
        if (Directory.Exists(parent)) Writing.To(path, () => Directory.CreateDirectory(staging)); // Refused before the work begins.
    }

    /// <summary>Makes ready to fill a folder, unless the name is that of a file by its ending.</summary>
    /// <param name="path">The final place of either.</param>
    /// <param name="fileEnding">How the name of a file ends, such as ".pdf".</param>
    /// <returns>The folder; null for a file.</returns>
    /// <exception cref="InputException">It must not be written.</exception>
    public static StagedFolder? UnlessFile(string path, string fileEnding)
    {
        if (!path.EndsWith(fileEnding, StringComparison.OrdinalIgnoreCase)) return new(path);
        StagedFile.Refuse(path);
        return null;
    }

    /// <summary>Whether it was completed with nothing in it but its list.</summary>
    public bool IsEmpty { get; private set; }

    /// <summary>Adds a file of bytes.</summary>
    /// <param name="name">Its name, without folders.</param>
    /// <param name="content">All of it.</param>
    public void Add(string name, byte[] content)
    {
        names.Add(name);
        Writing.To(path, () =>
        {
            Directory.CreateDirectory(staging);
            File.WriteAllBytes(Path.Combine(staging, name), content);
        });
    }

    /// <summary>Adds a file of text, UTF-8 without a byte order mark.</summary>
    public void Add(string name, string content) => Add(name, System.Text.Encoding.UTF8.GetBytes(content));

    /// <summary>Moves the complete folder into place.</summary>
    public void Complete()
    {
        IsEmpty = names.Count == 0;
        Add(ListName, string.Join('\n', names.Prepend(ListHeading)) + "\n");
        Refuse(target); // The work may have taken a while.
        string old = staging + ".old";
        bool replaces = Directory.Exists(target);
        Writing.To(path, () =>
        {
            if (replaces) Directory.Move(target, old);
            Directory.Move(staging, target);
            if (replaces) Directory.Delete(old, recursive: true);
        });
    }

    /// <summary>Removes what was left incomplete, and puts an earlier output back if the last move failed.</summary>
    public void Dispose()
    {
        string old = staging + ".old";
        if (Directory.Exists(old) && !Directory.Exists(target)) Directory.Move(old, target);
        if (Directory.Exists(staging)) Directory.Delete(staging, recursive: true);
    }

    private static void Refuse(string target)
    {
        if (File.Exists(target)) throw new InputException($"{target}: error: is a file; give a folder");
        if (!Directory.Exists(target)) return;

        string list = Path.Combine(target, ListName);
        HashSet<string> known = File.Exists(list) ? [ListName, .. File.ReadLines(list).Skip(1)] : [];
        string? foreign = Directory.EnumerateFileSystemEntries(target)
            .Select(entry => Path.GetFileName(entry))
            .Where(name => !known.Contains(name))
            .Order(StringComparer.Ordinal)
            .FirstOrDefault();
        if (foreign is not null)
            throw new InputException($"{target}: error: holds \"{foreign}\", which no earlier run wrote; give an empty or a new folder");
    }
}
