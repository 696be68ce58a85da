namespace MeshSim.Files.Tests.Fixtures;

/// <summary>A folder of its own for one test, gone afterwards.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public TemporaryFolder() => Path = Directory.CreateTempSubdirectory("meshsim-").FullName;

    public string Path { get; }

    public string File(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>Writes the sample home, each file with a change.</summary>
    public TemporaryFolder WithSample(Func<string, string>? home = null, Func<string, string>? devices = null, Func<string, string>? outlets = null, Func<string, string>? readings = null)
    {
        Write("home.yaml", SampleHome.HomeYaml, home);
        Write("devices.csv", SampleHome.DevicesCsv, devices);
        Write("outlets.csv", SampleHome.OutletsCsv, outlets);
        Write("readings.csv", SampleHome.ReadingsCsv, readings);
        return this;
    }

    public HomeReadResult Read() => HomeFolder.Read(Path);

    /// <summary>Every problem and every notice, as printed, the folder left out; checks that a home comes exactly when no problem does.</summary>
    public string[] Says()
    {
        HomeReadResult result = Read();
        (result.Home is null).Should().Be(!result.Problems.IsEmpty);
        return [.. result.Problems.Concat(result.Notices).Select(diagnostic => diagnostic.ToString().Replace(Path + System.IO.Path.DirectorySeparatorChar, "", StringComparison.Ordinal))];
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);

    private void Write(string name, string content, Func<string, string>? change) =>
        System.IO.File.WriteAllText(File(name), change is null ? content : change(content));
}
