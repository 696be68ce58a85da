using System.Reflection;
using System.Runtime.CompilerServices;

namespace MeshSim.Tests.Architecture;

/// <summary>The project's own source files and assemblies, for the tests that guard its shape.</summary>
internal static class SourceTree
{
    private static readonly string[] AssemblyNames = ["MeshSim", "MeshSim.Files", "MeshSim.Drawing", "MeshSim.Cli"];

    public static string Root { get; } = Path.GetFullPath(Path.Combine(Here(), "..", "..", ".."));

    public static Assembly Library { get; } = Assembly("MeshSim");

    public static IEnumerable<Assembly> Assemblies => AssemblyNames.Select(Assembly);

    public static bool IsAssembly(string name) => AssemblyNames.Contains(name, StringComparer.Ordinal);

    public static Assembly Assembly(string name) => System.Reflection.Assembly.Load(name);

    /// <summary>The C# files below a folder of the project, by their path from its root.</summary>
    public static IEnumerable<(string Path, string[] Lines)> Files(string folder) =>
        from file in Directory.EnumerateFiles(System.IO.Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
        let path = System.IO.Path.GetRelativePath(Root, file).Replace('\\', '/')
        where !path.Contains("/obj/", StringComparison.Ordinal) && !path.Contains("/bin/", StringComparison.Ordinal)
        orderby path
        select (path, File.ReadAllLines(file));

    private static string Here([CallerFilePath] string path = "") => System.IO.Path.GetDirectoryName(path)!;
}
