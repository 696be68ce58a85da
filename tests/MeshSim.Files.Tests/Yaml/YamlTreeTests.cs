using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Yaml;

/// <summary>What is said about a home.yaml that is no YAML, or more of it than wanted.</summary>
public sealed class YamlTreeTests
{
    [Theory]
    [InlineData("region: EU", "region: &a EU", "home.yaml(2,9): error: anchors, aliases and tags (&, *, !) are not accepted; write the value out; put text that begins with such a sign in quotes")]
    [InlineData("region: EU", "region: !!str EU", "home.yaml(2,9): error: anchors, aliases and tags (&, *, !) are not accepted; write the value out; put text that begins with such a sign in quotes")]
    [InlineData("    ceiling: 2.5", "\tceiling: 2.5", "home.yaml(10,1): error: the line is indented with a tab; indent with spaces")]
    [InlineData("to: [2, 4] }", "to: [2, 4 }", "home.yaml(14,39): error: this is not valid YAML inside brackets; look at the bracket that opens at line 14, column 33: is it closed, and is there a comma between its parts?")]
    [InlineData("region: EU", "region: EU: x", "home.yaml(2,11): error: this is not valid YAML (While scanning a plain scalar value, found invalid mapping); look at the indentation, colons and quotes here and just above")]
    [InlineData("home: Sample", "home: Sample\n---\nhome: Other", "home.yaml(2,1): error: a second document begins here; keep one home in one file")]
    [InlineData("bed switch]", "[bed switch]]", "home.yaml(39,76): error: \"switches off\" must be a text, not a list; write a text")]
    [InlineData("networks:\n", "networks: 5\nnetwork:\n", "home.yaml(33,11): error: \"networks\" is written as a list, not as \"5\"; write [a, b] or one item a line, each after a hyphen", "home.yaml(34,1): error: a home has no key \"network\"; did you mean \"networks\"?")]
    public void What_is_not_plain_YAML_is_refused_at_its_place(string find, string replacement, params string[] said) =>
        ChangedSample.Says("home.yaml", find, replacement).Should().Equal(said);
}
