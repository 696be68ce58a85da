namespace MeshSim.Cli.Tests;

/// <summary>The built program carries what it needs on each platform, not on this one alone; the package holds what is built.</summary>
public sealed class NativeLibrariesTests
{
    private static readonly string[] Platforms = ["linux-x64", "linux-arm64", "win-x64", "osx-x64", "osx-arm64"];

    public static TheoryData<string> Libraries =>
        [.. File.ReadLines(Path.Combine(Run.Root, ".ci", "native-libraries.txt")).Where(line => line.StartsWith("runtimes/", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Libraries))]
    public void Each_native_library_lies_beside_the_program(string library) =>
        new FileInfo(Path.Combine(AppContext.BaseDirectory, library)).Should().Match<FileInfo>(file => file.Exists && file.Length > 0);

    [Theory]
    [MemberData(nameof(Libraries))]
    public void Each_native_library_is_known_to_the_loader(string library) =>
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "MeshSim.Cli.deps.json")).Should().Contain($"\"{library}\"");

    [Fact]
    public void The_list_names_the_drawing_and_the_solver_of_every_platform()
    {
        string[] listed = [.. Libraries.Select(row => row.Data)];
        foreach (string platform in Platforms)
        {
            // One drawing library serves both kinds of Mac.
            string drawing = platform.StartsWith("osx", StringComparison.Ordinal) ? "osx" : platform;
            listed.Should().ContainSingle(path => path.StartsWith($"runtimes/{drawing}/native/libSkiaSharp.", StringComparison.Ordinal));
            listed.Should().ContainSingle(path => path.StartsWith($"runtimes/{platform}/native/google-ortools-native.", StringComparison.Ordinal));
        }
    }
}
