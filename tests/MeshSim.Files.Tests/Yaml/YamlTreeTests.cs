using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Yaml;

/// <summary>What is said about a home.yaml that is no YAML, or more of it than wanted.</summary>
public sealed class YamlTreeTests
{
    [Theory]
    [InlineData(
        "region: EU",
        "region: &a EU",
        "home.yaml(2,9): error: anchors, aliases and tags (&, *, !) are not accepted; write the value out; put text that begins with such a sign in quotes")]
    [InlineData(
        "region: EU",
        "region: !!str EU",
        "home.yaml(2,9): error: anchors, aliases and tags (&, *, !) are not accepted; write the value out; put text that begins with such a sign in quotes")]
    [InlineData("    ceiling: 2.5", "\tceiling: 2.5", "home.yaml(10,1): error: the line is indented with a tab; indent with spaces")]
    [InlineData(
        "to: [2, 4] }",
        "to: [2, 4 }",
        "home.yaml(14,39): error: this is not valid YAML inside brackets; look at the bracket that opens at line 14, column 33: is it closed, and is there "
            + "a comma between its parts?")]
    [InlineData(
        "region: EU",
        "region: EU: x",
        "home.yaml(2,11): error: this is not valid YAML (While scanning a plain scalar value, found invalid mapping); look at the indentation, colons and "
            + "quotes here and just above")]
    [InlineData("home: Sample", "home: Sample\n---\nhome: Other", "home.yaml(2,1): error: a second document begins here; keep one home in one file")]
    [InlineData("bed switch]", "[bed switch]]", "home.yaml(39,76): error: \"switches off\" must be a text, not a list; write a text")]
    [InlineData(
        "networks:\n",
        "networks: 5\nnetwork:\n",
        "home.yaml(33,11): error: \"networks\" is written as a list, not as \"5\"; write [a, b] or one item a line, each after a hyphen",
        "home.yaml(34,1): error: a home has no key \"network\"; did you mean \"networks\"?")]
    public void What_is_not_plain_YAML_is_refused_at_its_place(string find, string replacement, params string[] said) =>
        ChangedSample.Says("home.yaml", find, replacement).Should().Equal(said);

    [Fact]
    public void A_bomb_of_aliases_is_refused_before_it_grows()
    {
        string bomb = "a: &a [x,x,x,x,x,x,x,x,x]\n" + string.Join(
            '\n',
            Enumerable.Range('b', 20).Select(letter => $"{(char)letter}: &{(char)letter} [{string.Join(',', Enumerable.Repeat($"*{(char)(letter - 1)}", 9))}]"));
        using TemporaryFolder folder = new TemporaryFolder().WithSample(home: _ => bomb);

        folder.Says().Should().Equal("home.yaml(1,4): error: anchors, aliases and tags (&, *, !) are not accepted; write the value out; put text that begins with such a sign in quotes");
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{ a: ")]
    [InlineData("- ")]
    public void Deep_nesting_is_refused(string opening)
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample(home: _ => string.Concat(Enumerable.Repeat(opening, 100_000)));

        folder.Says().Should().ContainSingle().Which.Should().EndWith("error: the file nests more than 32 levels deep; a home needs far fewer");
    }

    [Theory]
    [InlineData(
        "just words",
        "home.yaml(1,1): error: a home is written as keys with values, not as \"just words\"; known keys: home, region, north, model, constructions, "
            + "storeys, networks, wifi, circuits, states, costs")]
    [InlineData(
        "- a\n- b",
        "home.yaml(1,1): error: a home is written as keys with values, not as a list; known keys: home, region, north, model, constructions, storeys, "
            + "networks, wifi, circuits, states, costs")]
    [InlineData("# nothing but a remark", "home.yaml(1,1): error: the file is empty; write a home, starting with \"home:\" and its name")]
    public void A_file_that_is_no_map_is_refused(string content, string said)
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample(home: _ => content);

        folder.Says().Should().Equal(said);
    }
}
