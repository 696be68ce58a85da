using MeshSim.Materials;

namespace MeshSim.Tests.Materials;

public class LayerTextTests
{
    [Theory]
    [InlineData("plasterboard:12.5, air:100, plasterboard:12.5")]
    [InlineData("plasterboard:12.5 | air:100 | plasterboard:12.5")]
    [InlineData("  Plasterboard : 12.5,air:100,PLASTERBOARD:1.25e1  ")]
    public void Reads_layers_front_face_first(string text)
    {
        ParsedLayers parsed = Parse(text);
        parsed.IsValid.Should().BeTrue();
        parsed.Layers.Select(layer => (layer.Material.Name, layer.ThicknessMetres))
            .Should().Equal(("plasterboard", 0.0125), ("air", 0.1), ("plasterboard", 0.0125));
    }

    [Theory]
    [InlineData("ceiling board:15")]
    [InlineData("ceiling_board:15")]
    [InlineData("ceiling-board:15")]
    public void A_space_or_an_underscore_counts_as_a_hyphen(string text) =>
        Parse(text).Layers.Single().Material.Name.Should().Be("ceiling-board");

    [Theory]
    [InlineData("", LayerProblemKind.Empty, 0, "")]
    [InlineData("brick:100,,air:50", LayerProblemKind.Empty, 10, "")]
    [InlineData("brick", LayerProblemKind.NoThickness, 0, "brick")]
    [InlineData("air:50, brick", LayerProblemKind.NoThickness, 8, "brick")]
    [InlineData("brick:102,5", LayerProblemKind.NoThickness, 10, "5")]
    [InlineData("birck:100", LayerProblemKind.UnknownMaterial, 0, "birck")]
    [InlineData(":100", LayerProblemKind.UnknownMaterial, 0, "")]
    [InlineData("brick:", LayerProblemKind.BadThickness, 6, "")]
    [InlineData("brick:thick", LayerProblemKind.BadThickness, 6, "thick")]
    [InlineData("brick:-1", LayerProblemKind.BadThickness, 6, "-1")]
    [InlineData("brick:0", LayerProblemKind.BadThickness, 6, "0")]
    [InlineData("brick:NaN", LayerProblemKind.BadThickness, 6, "NaN")]
    [InlineData("brick:∞", LayerProblemKind.BadThickness, 6, "∞")]
    [InlineData("brick:1e9", LayerProblemKind.BadThickness, 6, "1e9")]
    public void A_bad_part_is_named_with_its_place(string text, LayerProblemKind kind, int start, string offending)
    {
        ParsedLayers parsed = Parse(text);
        parsed.IsValid.Should().BeFalse();
        parsed.Layers.Should().BeEmpty();
        parsed.Problems.Should().ContainSingle().Which.Should().Match<LayerProblem>(
            problem => problem.Kind == kind && problem.Start == start && problem.Text == offending && problem.Message.Length > 0);
    }

    [Fact]
    public void All_problems_come_at_once() =>
        Parse("birck:x, , air").Problems.Select(problem => problem.Kind).Should().Equal(
            LayerProblemKind.UnknownMaterial, LayerProblemKind.BadThickness, LayerProblemKind.Empty, LayerProblemKind.NoThickness);

    [Fact]
    public void A_decimal_comma_is_explained() =>
        Parse("brick:102,5").Problems.Single().Message.Should().Contain("decimal point");

    [Fact]
    public void The_most_layers_are_accepted_and_one_more_is_not()
    {
        string most = string.Join('|', Enumerable.Repeat("glass:4", PlanningLoss.MaxLayers));
        Parse(most).IsValid.Should().BeTrue();
        Parse(most + "|glass:4").Problems.Should().ContainSingle().Which.Kind.Should().Be(LayerProblemKind.TooMany);
    }

    [Fact]
    public void Thickness_is_accepted_at_its_limits()
    {
        Parse(FormattableString.Invariant($"glass:{LayerText.ThicknessMillimetres.Min}")).IsValid.Should().BeTrue();
        Parse(FormattableString.Invariant($"glass:{LayerText.ThicknessMillimetres.Max}")).IsValid.Should().BeTrue();
        Parse(FormattableString.Invariant($"glass:{LayerText.ThicknessMillimetres.Min / 2}")).IsValid.Should().BeFalse();
        Parse(FormattableString.Invariant($"glass:{LayerText.ThicknessMillimetres.Max + 1}")).IsValid.Should().BeFalse();
    }

    private static ParsedLayers Parse(string text) => LayerText.Parse(text, name => MaterialCatalogue.Find(name));
}
