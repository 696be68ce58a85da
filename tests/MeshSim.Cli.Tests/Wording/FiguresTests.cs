using MeshSim.Cli.Wording;

namespace MeshSim.Cli.Tests.Wording;

public sealed class FiguresTests
{
    [Theory]
    [InlineData(6.44, "6.4")]
    [InlineData(-7.26, "-7.3")]
    [InlineData(-0.04, "0.0")]
    [InlineData(0, "0.0")]
    [InlineData(double.PositiveInfinity, "never")]
    public void Tenths_have_one_decimal_and_no_minus_zero(double value, string expected) => Figures.Tenths(value).Should().Be(expected);

    [Theory]
    [InlineData(0, "0.0")]
    [InlineData(0.0002, "<0.1")]
    [InlineData(0.5, "50.0")]
    [InlineData(0.9985, "99.9")]
    [InlineData(0.9997, ">99.9")]
    [InlineData(1, "100")]
    public void A_share_never_claims_all_or_nothing_before_it_is_true(double share, string expected) => Figures.Percent(share).Should().Be(expected);

    [Theory]
    [InlineData(1, "1 device")]
    [InlineData(0, "0 devices")]
    [InlineData(18, "18 devices")]
    public void A_noun_follows_its_count(int count, string expected) => Figures.Counted(count, "device").Should().Be(expected);

    [Fact]
    public void No_culture_changes_a_figure()
    {
        System.Globalization.CultureInfo before = System.Globalization.CultureInfo.CurrentCulture;
        System.Globalization.CultureInfo.CurrentCulture = Run.DecimalComma();
        try
        {
            new[] { Figures.Tenths(-1234.56), Figures.Percent(0.1234), Figures.Plain(0.125), Figures.Count(12345) }
                .Should().Equal("-1234.6", "12.3", "0.125", "12345");
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentCulture = before;
        }
    }
}
