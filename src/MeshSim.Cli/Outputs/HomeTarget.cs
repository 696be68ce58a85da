namespace MeshSim.Cli.Outputs;

/// <summary>The place of a home folder that is to be made: nothing of a person's is ever replaced there.</summary>
internal static class HomeTarget
{
    /// <summary>Refuses a place that holds something.</summary>
    /// <param name="path">As the user named it.</param>
    /// <exception cref="InputException">It is empty, a file, or a folder that holds something.</exception>
    public static void Refuse(string path)
    {
        if (path.Length == 0) throw new InputException("error: the folder to make has no name");
        if (File.Exists(path)) throw new InputException($"{path}: error: is a file; give a folder");
        if (Directory.Exists(path) && Directory.EnumerateFileSystemEntries(path).Any())
            throw new InputException($"{path}: error: holds files already; give a new or an empty folder, a home there is never replaced");
    }
}
