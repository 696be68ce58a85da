namespace MeshSim.Files.Writing;

/// <summary>A folder beside the target in which files are made, so that the target gets all of them or none.</summary>
internal sealed class FreshFolder : IDisposable
{
    private readonly string target;

    /// <summary>Makes it.</summary>
    /// <param name="target">Where the files belong; made when it is not there.</param>
    public FreshFolder(string target)
    {
        this.target = System.IO.Path.TrimEndingDirectorySeparator(System.IO.Path.GetFullPath(target));
        int number = 1;
        do Path = FormattableString.Invariant($"{this.target}.unfinished-{number++}");
        while (System.IO.Path.Exists(Path));
        Directory.CreateDirectory(Path);
    }

    /// <summary>Where it is.</summary>
    public string Path { get; }

    /// <summary>Moves the files of a home into the target; other files there stay, and files of a home that were not made go.</summary>
    public void MoveIntoPlace()
    {
        if (!System.IO.Path.Exists(target))
        {
            Directory.Move(Path, target);
            return;
        }

        foreach (string name in HomeFileNames.All)
        {
            string made = System.IO.Path.Combine(Path, name), old = System.IO.Path.Combine(target, name);
            if (File.Exists(made)) File.Move(made, old, overwrite: true);
            else File.Delete(old);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (Directory.Exists(Path)) Directory.Delete(Path, recursive: true);
    }
}
