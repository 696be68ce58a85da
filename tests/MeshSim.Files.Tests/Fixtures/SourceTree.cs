namespace MeshSim.Files.Tests.Fixtures;

/// <summary>The checked-out project, found upwards from where the tests run.</summary>
internal static class SourceTree
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    private static string Find(string folder)
    {
        for (DirectoryInfo? candidate = new(folder); candidate is not null; candidate = candidate.Parent)
            if (File.Exists(Path.Combine(candidate.FullName, "MeshSim.sln"))) return candidate.FullName;
        throw new InvalidOperationException("the tests run outside the project");
    }
}
