using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Radio;
using MeshSim.Tests.Fitting;

namespace MeshSim.Tests.Mesh;

public sealed class MarginUncertaintiesTests
{
    private const double Rounding = 1e-12;

    private static readonly Mounting Bare = MeshSamples.Surface;

    private static readonly Network Plugs = Terrace.Plugs;

    [Fact]
    public void Spreads_of_one_construction_add_and_those_of_two_add_their_squares()
    {
        double brickDb = Terrace.Home.Constructions[new("brick-half")].Spread.Value, leadDb = Terrace.Home.Constructions[new("cavity-brick")].Spread.Value;

        LossesDb(Plugs, "brick-half").Should().BeApproximately(brickDb, Rounding);
        LossesDb(Plugs, "brick-half", "brick-half").Should().BeApproximately(2 * brickDb, Rounding, "two walls of one kind are wrong together");
        LossesDb(Plugs, "brick-half", "cavity-brick").Should().BeApproximately(Math.Sqrt((brickDb * brickDb) + (leadDb * leadDb)), Rounding);
    }

    [Fact]
    public void What_was_fitted_has_the_covariance_of_the_fit()
    {
        Network fitted = Plugs with
        {
            Fit = Terrace.Really.Fit! with
            {
                Parameters = [new(FittedKind.Exponent, "", 2, 0.1, 9), new(FittedKind.Construction, "brick-half", 1, 0.5, 9)],
                Correlations = [[-0.6]],
            },
        };

        LossesDb(fitted, "brick-half", "brick-half").Should().BeApproximately(1, Rounding, "at 1 m the exponent has no say");
        double variance = (10 * 0.1 * 10 * 0.1) + (0.5 * 0.5) - (2 * 0.6 * 10 * 0.1 * 0.5);
        new MarginUncertainties(Terrace.Home, fitted).Of(Path(10, "brick-half"), Bare, Bare).Losses.Value.Should().BeApproximately(Math.Sqrt(variance), Rounding);
    }

    [Fact]
    public void The_way_round_counts_where_power_goes_round()
    {
        PathLoss round = new(ModelNames.Detour, 1, [new LossItem { Kind = LossKind.Detour, Name = "way round", Loss = new(-5), Sensitivity = 0.5 }]);
        Network fitted = Plugs with
        {
            Fit = Terrace.Really.Fit! with { Parameters = [new(FittedKind.Exponent, "", 2, 0, 9), new(FittedKind.Detour, "", 14, 3, 9)], Correlations = [[0]] },
        };

        new MarginUncertainties(Terrace.Home, Plugs).Of(round, Bare, Bare).Losses.Value.Should().BeApproximately(MarginUncertainties.DetourDb / 2, Rounding);
        new MarginUncertainties(Terrace.Home, fitted).Of(round, Bare, Bare).Losses.Value.Should().BeApproximately(1.5, Rounding);
    }

    [Fact]
    public void Distance_brings_the_exponent_and_devices_their_mountings()
    {
        var uncertainties = new MarginUncertainties(Terrace.Home, Plugs);
        Mounting wild = Bare with { Name = "wild", Spread = new(4) };

        uncertainties.Of(Path(100), Bare, Bare).Losses.Value.Should().BeApproximately(20 * MarginUncertainties.ExponentDeviation, Rounding);
        uncertainties.Of(Path(1), wild, wild).Losses.Value.Should().BeApproximately(8, Rounding);
        uncertainties.Of(Path(1), Bare, Bare).Shadowing.Should().Be(Terrace.Home.Parameters.Shadowing);
    }

    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(5, 0.841344746069)]
    [InlineData(-10, 0.022750131948)]
    public void A_margin_holds_as_often_as_the_normal_distribution_says(double marginDb, double probability) =>
        new MarginUncertainty(new(3), new(4)).ProbabilityAbove(Decibels.Zero, new(marginDb)).Should().BeApproximately(probability, 1e-11);

    [Fact]
    public void Links_carry_their_uncertainty_and_the_margin_is_as_it_was()
    {
        IPathLossModel model = Terrace.Home.ModelOf(Plugs, ModelName.LogDistance, state: null);
        foreach (Link link in LinkTable.Compute(Terrace.Home, Plugs, model, state: null))
        {
            link.Uncertainty.Total.Value.Should().BeGreaterThan(link.Uncertainty.Shadowing.Value);
            (link.Holds > 0.5).Should().Be(link.Margin > Decibels.Zero);
        }
    }

    private static double LossesDb(Network network, params string[] constructions) =>
        new MarginUncertainties(Terrace.Home, network).Of(Path(1, constructions), Bare, Bare).Losses.Value;

    private static PathLoss Path(double metres, params string[] constructions) => new(ModelNames.LogDistance, metres,
    [
        .. constructions.Select(name => new LossItem { Kind = LossKind.Wall, Name = "wall", Construction = new(name), Loss = new(5), Sensitivity = 1 }),
    ]);
}
