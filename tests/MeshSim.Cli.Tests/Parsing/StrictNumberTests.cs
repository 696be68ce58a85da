using MeshSim.Cli.Parsing;
using MeshSim.Quantities;

namespace MeshSim.Cli.Tests.Parsing;

public sealed class StrictNumberTests
{
    private static readonly ValidRange Range = new(-10, 1000, "m");

    [Theory]
    [InlineData("2.4", 2.4)]
    [InlineData("-1.5", -1.5)]
    [InlineData("1000", 1000)]
    [InlineData("1e2", 100)]
    public void A_number_with_a_decimal_point_is_read(string text, double expected)
    {
        StrictNumber.Read(text, Range, out double value).Should().BeNull();

        value.Should().Be(expected);
    }

    [Theory]
    [InlineData("2,4")]
    [InlineData("1,000")]
    public void A_comma_is_refused_with_what_would_be_right(string text) =>
        StrictNumber.Read(text, Range, out _).Should().Be($"\"{text}\" is not a number: use a point: {text.Replace(',', '.')}");

    [Fact]
    public void Where_several_values_may_stand_a_comma_may_have_been_meant_to_part_them() =>
        StrictNumber.Read("0,30", Range, out _, isOneOfSeveral: true).Should().EndWith("use a point: 0.30; several values are separated by spaces");

    [Fact]
    public async Task An_option_of_one_value_asks_for_a_point_alone() =>
        (await Run.Of("rehearse", Run.TwoRooms, "--correlation", "0,4")).ErrorLines.Should()
            .Equal("error: --correlation: \"0,4\" is not a number: use a point: 0.4; see meshsim rehearse --help");

    [Theory]
    [InlineData("")]
    [InlineData("abc")]
    [InlineData("0x10")]
    [InlineData(" 5")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    public void What_is_no_plain_number_is_refused(string text) => StrictNumber.Read(text, Range, out _).Should().NotBeNull();

    [Theory]
    [InlineData("-10.1")]
    [InlineData("1000.1")]
    public void A_number_out_of_range_is_refused_with_the_range(string text) =>
        StrictNumber.Read(text, Range, out _).Should().Be($"{text} is outside -10 to 1000 m");
}
