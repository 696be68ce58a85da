namespace MeshSim.Cli.Outputs;

/// <summary>Writes where the user said, and says so when that cannot be.</summary>
internal static class Writing
{
    /// <summary>Does something that writes.</summary>
    /// <param name="path">The output as the user named it: staging names mean nothing to anybody else.</param>
    /// <param name="write">What writes.</param>
    /// <exception cref="InputException">It cannot be written.</exception>
    public static void To(string path, Action write)
    {
        try
        {
            write();
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            string parent = Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path))) ?? path;
            throw new InputException($"{path}: error: cannot be written; is {parent} read-only, full, or somebody else's?");
        }
    }
}
