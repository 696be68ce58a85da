namespace MeshSim.Cli.Tests;

/// <summary>A folder that lasts as long as a test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("meshsim-test-").FullName;

    public string this[string name] => System.IO.Path.Combine(Path, name);

    /// <summary>Everything below, by relative path, with its bytes as text.</summary>
    public IReadOnlyDictionary<string, string> Contents() => Directory
        .EnumerateFiles(Path, "*", SearchOption.AllDirectories)
        .ToDictionary(file => System.IO.Path.GetRelativePath(Path, file), file => Convert.ToHexString(File.ReadAllBytes(file)));

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
