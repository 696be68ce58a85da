using CsCheck;
using MeshSim.Quantities;

namespace MeshSim.Tests.Quantities;

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

    [Theory]
    [InlineData("1e999", true)]
    [InlineData("NaN", true)]
    [InlineData("-Infinity", true)]
    [InlineData("1e9", false)]
    [InlineData("wide", false)]
    public void What_has_the_form_and_no_finite_value_is_told_from_what_has_neither(string text, bool isNotFinite) =>
        NumberText.IsNotFinite(text).Should().Be(isNotFinite);

    [Fact]
    public void What_is_written_is_read_back() =>
        Gen.Double.Where(double.IsFinite).Sample(number => NumberText.Parse(NumberText.Of(number)) == number);
}
