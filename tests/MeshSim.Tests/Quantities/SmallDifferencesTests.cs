using CsCheck;
using MeshSim.Quantities;

namespace MeshSim.Tests.Quantities;

public sealed class SmallDifferencesTests
{
    /// <summary>Four roundings of a double.</summary>
    private const double FourRoundings = 4 * 2.3e-16;

    [Fact]
    public void Near_zero_both_follow_their_series() =>
        Gen.Double[-1e-4, 1e-4].Sample(x =>
        {
            double exponential = x + (x * x / 2) + (x * x * x / 6) + (x * x * x * x / 24), logarithm = x - (x * x / 2) + (x * x * x / 3) - (x * x * x * x / 4);
            return Math.Abs(SmallDifferences.ExponentialMinusOne(x) - exponential) <= FourRoundings * Math.Abs(x)
                && Math.Abs(SmallDifferences.LogarithmOfOnePlus(x) - logarithm) <= FourRoundings * Math.Abs(x);
        });

    [Fact]
    public void Each_undoes_the_other() =>
        Gen.Double[-0.9, 2].Sample(x =>
            Math.Abs(SmallDifferences.ExponentialMinusOne(SmallDifferences.LogarithmOfOnePlus(x)) - x) <= FourRoundings * 10 * Math.Abs(x) + double.Epsilon);

    [Fact]
    public void The_ends_are_exact()
    {
        SmallDifferences.ExponentialMinusOne(0).Should().Be(0);
        SmallDifferences.ExponentialMinusOne(-800).Should().Be(-1);
        SmallDifferences.ExponentialMinusOne(double.NegativeInfinity).Should().Be(-1);
        SmallDifferences.LogarithmOfOnePlus(0).Should().Be(0);
        SmallDifferences.LogarithmOfOnePlus(-1).Should().Be(double.NegativeInfinity);
    }
}
