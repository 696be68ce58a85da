using MeshSim.FloorPlans;
using MeshSim.Materials;

namespace MeshSim.Tests.Materials;

/// <summary>The shipped catalogue of constructions.</summary>
public class ConstructionCatalogueTests
{
    private const int RowsAtLeast = 35;

    [Fact]
    public void Every_row_has_layers_or_stated_losses_and_a_source()
    {
        MaterialCatalogue.Constructions.Should().HaveCountGreaterThanOrEqualTo(RowsAtLeast);
        MaterialCatalogue.Constructions.Values.Should().OnlyContain(construction =>
            construction.Layers.IsEmpty != construction.Stated.IsEmpty
            && construction.Source.Length > 0
            && construction.Description.Length > 0
            && construction.Spread.Value > 0);
    }

    [Fact]
    public void Stated_losses_are_in_order_of_frequency_and_positive() =>
        MaterialCatalogue.Constructions.Values.Should().OnlyContain(construction =>
            construction.Stated.All(stated => stated.Loss.Value > 0)
            && construction.Stated.Zip(construction.Stated.Skip(1)).All(pair => pair.First.Frequency < pair.Second.Frequency));

    [Fact]
    public void Every_use_has_its_constructions() =>
        MaterialCatalogue.Constructions.Values.Select(construction => construction.Use).Distinct()
            .Should().BeEquivalentTo(Enum.GetValues<ConstructionUse>());

    [Theory]
    [InlineData("cavity-brick")]
    [InlineData("stud-partition")]
    [InlineData("brick-half")]
    [InlineData("brick-full")]
    [InlineData("door-timber")]
    [InlineData("glazing-double")]
    [InlineData("metal-cabinet")]
    [InlineData("joists-chipboard-plasterboard")]
    public void The_names_that_homes_use_most_are_there(string name) =>
        MaterialCatalogue.Constructions.Should().ContainKey(new ConstructionName(name));

    [Fact]
    public void Names_are_lower_case_words_joined_by_hyphens() =>
        MaterialCatalogue.Constructions.Keys.Should().OnlyContain(name =>
            name.Value.Length > 0 && name.Value.All(c => c == '-' || char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c)));
}
