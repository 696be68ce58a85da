using MeshSim.Cli.Outputs;

namespace MeshSim.Cli.Tests.Outputs;

public sealed class CsvTextTests
{
    [Theory]
    [InlineData("plain text", "plain text")]
    [InlineData("a, b", "\"a, b\"")]
    [InlineData("says \"so\"", "\"says \"\"so\"\"\"")]
    [InlineData("two\nlines", "\"two\nlines\"")]
    [InlineData("", "")]
    public void A_field_is_quoted_where_it_must_be(string text, string field) => CsvText.Field(text).Should().Be(field);

    [Fact]
    public void A_line_ends_with_a_line_feed() => CsvText.Line(["a", "b,c"]).Should().Be("a,\"b,c\"\n");
}
