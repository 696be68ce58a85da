using MathNet.Numerics;
using MathNet.Numerics.Integration;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class MarcumQTests
{
    /// <summary>What 256 Gauss points make of a smooth density.</summary>
    private const double QuadratureShare = 1e-9;

    [Theory]
    [InlineData(0.5, 1)]
    [InlineData(2, 0.1)]
    [InlineData(5, 3)]
    [InlineData(8, 9)]
    [InlineData(30, 25)]
    public void It_is_the_integral_of_the_rice_density(double amplitude, double level)
    {
        double expected = GaussLegendreRule.Integrate(
            r => r * Math.Exp(-(r - amplitude) * (r - amplitude) / 2) * SpecialFunctions.BesselIScaled(0, r * amplitude), 0, level, 256);
        MarcumQ.Complement(amplitude, level).Should().BeApproximately(expected, QuadratureShare * expected);
    }

    [Fact]
    public void Without_a_wave_it_is_the_rayleigh_distribution() =>
        MarcumQ.Complement(0, 2).Should().BeApproximately(1 - Math.Exp(-2), PrintedDigits.SearchShare);

    [Fact]
    public void Nothing_lies_below_zero_and_everything_below_a_high_level()
    {
        MarcumQ.Complement(3, 0).Should().Be(0);
        MarcumQ.Complement(3, 60).Should().BeApproximately(1, PrintedDigits.SearchShare);
    }

    [Theory]
    [InlineData(-1, 1)]
    [InlineData(1, double.NaN)]
    [InlineData(101, 1)]
    public void Nonsense_is_refused(double amplitude, double level) =>
        FluentActions.Invoking(() => MarcumQ.Complement(amplitude, level)).Should().Throw<ArgumentOutOfRangeException>();
}
