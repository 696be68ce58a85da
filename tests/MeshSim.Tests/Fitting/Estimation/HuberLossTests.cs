using MathNet.Numerics.Integration;
using MeshSim.Fitting.Estimation;
using MeshSim.Radio;

namespace MeshSim.Tests.Fitting.Estimation;

public sealed class HuberLossTests
{
    /// <summary>A central difference over 2e-4 of a function whose third derivative is about 1 errs by 1e-9, and rounding by 1e-11.</summary>
    private const double DifferenceError = 1e-7;

    private const double QuadratureError = 1e-6;

    private static readonly double[] Residuals = [-7, -1.4, -1, -0.3, 0, 0.2, 1.3, 1.5, 4, 30, 80];

    [Fact]
    public void The_usual_bend_has_95_percent_of_the_efficiency_of_least_squares()
    {
        double curved = 1 - (2 * NormalDistribution.Tail(HuberLoss.UsualBend));

        (curved * curved / HuberLoss.Usual.MeanSquareSlope).Should().BeApproximately(0.95, 0.0001, "that is how the figure of 1.345 was chosen (Huber 1981)");
        HuberLoss.LeastSquares.MeanSquareSlope.Should().Be(1);
    }

    [Fact]
    public void Slopes_are_derivatives()
    {
        const double step = 1e-4;
        foreach (HuberLoss loss in new[] { HuberLoss.Usual, HuberLoss.LeastSquares })
        {
            foreach (double x in Residuals)
            {
                loss.Slope(x).Should().BeApproximately((loss.Of(x + step) - loss.Of(x - step)) / (2 * step), DifferenceError);
                loss.CensoredSlope(x).Should().BeApproximately((loss.OfCensored(x + step) - loss.OfCensored(x - step)) / (2 * step), DifferenceError);
                loss.CensoredCurvature(x).Should().BeApproximately((loss.CensoredSlope(x + step) - loss.CensoredSlope(x - step)) / (2 * step), 1e-6);
                (loss.Weight(x) * x).Should().BeApproximately(loss.Slope(x), 1e-12);
            }
        }
    }

    [Fact]
    public void A_censored_observation_scatters_as_what_a_normal_distribution_has_below_its_limit()
    {
        foreach (double excess in new[] { -3, -1.5, 0, 0.5, 1.2, 2.5 })
        {
            double Weighted(double x) => Math.Pow(HuberLoss.Usual.Slope(x), 2) * Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI);
            double squares = Enumerable.Range(-160, 160 - (int)(excess * 10)).Sum(tenth => GaussLegendreRule.Integrate(Weighted, tenth / 10.0, Math.Min(-excess, (tenth + 1) / 10.0), 8));

            HuberLoss.Usual.CensoredMeanSquareSlope(excess).Should().BeApproximately(squares / NormalDistribution.Tail(excess), 0.02);
        }
    }

    [Fact]
    public void An_unheard_pair_that_should_be_heard_by_far_pulls_as_a_wild_reading_does()
    {
        HuberLoss.Usual.CensoredSlope(50).Should().Be(HuberLoss.UsualBend);
        HuberLoss.Usual.CensoredSlope(-6).Should().BeLessThan(QuadratureError, "and one that nobody expects to be heard does not pull at all");
    }
}
