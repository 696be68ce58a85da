using CsCheck;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class TimeDistributionTests
{
    /// <summary>Sums of some hundred shares, and 1e-10 of probability dropped at the ends.</summary>
    private const double Rounding = 1e-7;

    [Fact]
    public void A_certain_time_is_its_own_mean_and_percentile()
    {
        var time = TimeDistribution.Certain(864);
        (time.MeanMilliseconds, time.QuantileMilliseconds(0.01), time.QuantileMilliseconds(0.99)).Should().Be((0.864, 0.864, 0.864));
    }

    [Fact]
    public void A_uniform_wait_has_its_middle_as_mean_and_percentiles_on_its_steps()
    {
        var wait = TimeDistribution.Uniform(320, 8);
        wait.MeanMilliseconds.Should().BeApproximately(1.12, Rounding);
        wait.QuantileMilliseconds(0.5).Should().BeApproximately(0.96, Rounding, "four of eight are 0, 320, 640, 960");
        wait.QuantileMilliseconds(0.95).Should().BeApproximately(2.24, Rounding);
    }

    [Fact]
    public void Two_dice_sum_as_dice_do()
    {
        TimeDistribution dice = TimeDistribution.Uniform(16, 6).Then(TimeDistribution.Uniform(16, 6));
        dice.MeanMilliseconds.Should().BeApproximately(0.08, Rounding, "the mean of 0 to 5, twice");
        dice.QuantileMilliseconds(35.5 / 36).Should().BeApproximately(0.16, Rounding, "only one of 36 throws is the greatest");
        dice.QuantileMilliseconds(34.5 / 36).Should().BeApproximately(0.144, Rounding);
    }

    [Fact]
    public void Means_add_and_mix_by_their_shares() =>
        Gen.Select(Gen.Int[1, 40], Gen.Int[1, 40], Gen.Double[0.01, 0.99]).Sample((first, second, share) =>
        {
            TimeDistribution a = TimeDistribution.Uniform(48, first), b = TimeDistribution.Uniform(32, second);
            a.Then(b).MeanMilliseconds.Should().BeApproximately(a.MeanMilliseconds + b.MeanMilliseconds, Rounding);
            TimeDistribution.Mix((share, a), (1 - share, b)).MeanMilliseconds
                .Should().BeApproximately((share * a.MeanMilliseconds) + ((1 - share) * b.MeanMilliseconds), Rounding);
        });
}
