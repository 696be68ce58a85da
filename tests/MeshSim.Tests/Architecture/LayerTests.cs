using NetArchTest.Rules;

namespace MeshSim.Tests.Architecture;

/// <summary>Layers point down and assemblies split where an outside dependency begins, read from the compiled references.</summary>
public sealed class LayerTests
{
    private static readonly string[] LowestFirst =
        ["Quantities", "FloorPlans", "Materials", "Propagation", "Radio", "Devices", "Mesh", "Placement", "Fitting", "Dropouts", "Studies"];

    public static TheoryData<string> Layers => [.. LowestFirst];

    [Theory]
    [MemberData(nameof(Layers))]
    public void A_layer_knows_no_layer_above_it(string layer)
    {
        string[] above = [.. LowestFirst.SkipWhile(name => name != layer).Skip(1).Select(name => "MeshSim." + name)];
        if (above.Length == 0) return;

        NetArchTest.Rules.TestResult result = Types.InAssembly(SourceTree.Library)
            .That().ResideInNamespace("MeshSim." + layer)
            .ShouldNot().HaveDependencyOnAny(above)
            .GetResult();

        result.FailingTypeNames.Should().BeNullOrEmpty();
    }

    [Fact]
    public void Every_type_of_the_library_belongs_to_a_layer()
    {
        IEnumerable<string> strangers = SourceTree.Library.GetTypes()
            .Where(type => type.Namespace is { } space && space.StartsWith("MeshSim", StringComparison.Ordinal))
            .Where(type => !LowestFirst.Contains(type.Namespace!.Split('.').ElementAtOrDefault(1)))
            .Select(type => type.FullName!);

        strangers.Should().BeEmpty();
    }

    [Theory]
    [InlineData("MeshSim", "YamlDotNet", "CsvHelper", "SkiaSharp", "System.CommandLine", "Spectre.Console")]
    [InlineData("MeshSim.Files", "SkiaSharp", "System.CommandLine", "Spectre.Console")]
    [InlineData("MeshSim.Drawing", "YamlDotNet", "CsvHelper", "System.CommandLine", "Spectre.Console", "MeshSim.Files")]
    [InlineData("MeshSim.Cli", "YamlDotNet", "CsvHelper", "SkiaSharp", "Google.OrTools", "MathNet.Numerics")]
    public void An_outside_dependency_stays_in_its_assembly(string assembly, params string[] foreign)
    {
        IEnumerable<string> referenced = SourceTree.Assembly(assembly).GetReferencedAssemblies().Select(name => name.Name!);

        referenced.Should().NotContain(name => foreign.Contains(name));
    }

    [Fact]
    public void Every_class_is_sealed_static_or_abstract()
    {
        IEnumerable<string> open = SourceTree.Assemblies
            .SelectMany(assembly => assembly.GetTypes())
            .Where(type => type.IsClass && !type.IsSealed && !type.IsAbstract)
            .Where(type => type.Namespace?.StartsWith("MeshSim", StringComparison.Ordinal) == true && !type.Name.Contains('<'))
            .Select(type => type.FullName!);

        open.Should().BeEmpty();
    }
}
