using MeshSim.Mesh.Reliability;
using MeshSim.Radio;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Mesh;

/// <summary>Keeps docs/models-mesh.md to the four parts of a model and to the limits of the code.</summary>
public sealed class MeshModelsPageTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(SourceTree.Root, "docs", "models-mesh.md")).ReplaceLineEndings(" ");

    [Fact]
    public void Every_model_has_its_four_parts()
    {
        string[] models = [.. Page.Split("## ").Skip(1)];
        models.Select(model => model.Split("  ")[0]).Should().Equal("Routes", "Ways and the second way", "Parents", "Needed routers", "Rehearsal", "Reliability");
        models.Should().OnlyContain(model => new[] { "**Formula.**", "**Symbols.**", "**Range.**", "**Outside.**" }.All(model.Contains));
    }

    [Fact]
    public void Limits_and_defaults_are_those_of_the_code()
    {
        Page.Should().Contain(LinkShadowing.CorrelationRange.ToString())
            .And.Contain(DeliveryRatio.ShadowingDb.ToString())
            .And.Contain(ConnectionDraws.Draws.ToString())
            .And.Contain(FormattableString.Invariant($"ρ is {LinkShadowing.DefaultCorrelation} unless said"))
            .And.Contain(FormattableString.Invariant($"at most {ExactConnection.MostLinks} of them"));
    }
}
