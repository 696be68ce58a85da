using CsCheck;
using MeshSim.Files.Sources;

namespace MeshSim.Files.Tests.Sources;

public sealed class NumberTextTests
{
    [Theory]
    [InlineData("2.45", 2.45)]
    [InlineData("-1", -1)]
    [InlineData("+0.5", 0.5)]
    [InlineData(".5", 0.5)]
    [InlineData("1e3", 1000)]
    public void A_plain_number_is_read(string text, double number) => NumberText.Parse(text).Should().Be(number);

    [Theory]
    [InlineData("")]
    [InlineData("2,45")]
    [InlineData("1,000")]
    [InlineData("1 000")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1e999")]
    [InlineData("0x10")]
    [InlineData(" 1")]
    [InlineData("١")]
    public void Anything_else_is_not(string text) => NumberText.Parse(text).Should().BeNull();

    [Fact]
    public void What_is_written_is_read_back() =>
        Gen.Double.Where(double.IsFinite).Sample(number => NumberText.Parse(NumberText.Of(number)) == number);
}
