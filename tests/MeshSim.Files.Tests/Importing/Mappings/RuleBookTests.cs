using MeshSim.Files.Importing.Mappings;

namespace MeshSim.Files.Tests.Importing.Mappings;

public sealed class RuleBookTests
{
    private static readonly RuleBook Book = new(
        new()
        {
            Rules =
            [
                new() { Place = new("map.yaml", 1, 1), Meaning = Meaning.Door, Id = "gap*" },
                new() { Place = new("map.yaml", 2, 1), Meaning = Meaning.Nothing, Layer = "stud partition", Class = "old" },
            ],
        },
        "plan.svg");

    [Fact]
    public void A_rule_counts_before_what_a_layer_is_named_for()
    {
        Book.Find(new() { Layers = ["Stud_Partition"] })!.Value.Rule.Construction!.Value.Value.Should().Be("stud-partition");
        Book.Find(new() { Layers = ["Stud_Partition"], Classes = ["old"] })!.Value.Rule.Meaning.Should().Be(Meaning.Nothing);
        Book.Find(new() { Layers = ["stud-partition"], Id = "Gap 12" })!.Value.Rule.Meaning.Should().Be(Meaning.Door);
    }

    [Fact]
    public void The_innermost_layer_that_means_something_decides()
    {
        RuleMatch match = Book.Find(new() { Layers = ["rooms", "brick-half", "left part"] })!.Value;

        match.Rule.Meaning.Should().Be(Meaning.Wall);
        match.LayerIndex.Should().Be(1);
    }

    [Theory]
    [InlineData("glazing-double", "Window")]
    [InlineData("door-fire", "Door")]
    [InlineData("wardrobe", "Object")]
    [InlineData("Room names", "RoomName")]
    [InlineData("Devices", "Device")]
    public void A_class_does_where_there_is_no_layer(string name, string meaning) =>
        Book.Find(new() { Classes = ["x", name] })!.Value.Rule.Meaning.ToString().Should().Be(meaning);

    [Fact]
    public void What_means_nothing_to_anybody_has_no_rule() => Book.Find(new() { Layers = ["Layer 1"], Classes = ["st0"], Id = "path1" }).Should().BeNull();
}
