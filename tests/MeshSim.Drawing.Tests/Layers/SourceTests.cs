namespace MeshSim.Drawing.Tests.Layers;

public sealed class SourceTests
{
    private const int LongestLayerLines = 60;

    [Fact]
    public void A_layer_is_a_short_file()
    {
        foreach ((string path, string[] lines) in Sources().Where(file => file.Path.EndsWith("Layer.cs", StringComparison.Ordinal)))
            lines.Count(line => line.Trim() is { Length: > 0 } text && !text.StartsWith("//", StringComparison.Ordinal)).Should().BeLessThanOrEqualTo(LongestLayerLines, path);
    }

    [Theory]
    [InlineData("new SKPaint", "Ink.cs")]
    [InlineData("new SKFont(", "Ink.cs")]
    [InlineData("canvas.", "CanvasPen.cs")]
    public void Paints_and_the_canvas_have_one_owner(string use, string owner)
    {
        IEnumerable<string> users = Sources().Where(file => Array.Exists(file.Lines, line => line.Contains(use, StringComparison.Ordinal))).Select(file => Path.GetFileName(file.Path));

        users.Should().Equal(owner);
    }

    private static IEnumerable<(string Path, string[] Lines)> Sources()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "MeshSim.sln"))) folder = folder.Parent;
        folder.Should().NotBeNull("the tests run inside the repository");
        return Directory.EnumerateFiles(Path.Combine(folder!.FullName, "src", "MeshSim.Drawing"), "*.cs", SearchOption.AllDirectories)
            .Where(path => !path.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Select(path => (path, File.ReadAllLines(path)));
    }
}
