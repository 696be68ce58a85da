using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Tests.Fitting;

namespace MeshSim.Tests.Mesh;

public sealed class LossSlopeTests
{
    private const double Rounding = 1e-12;

    [Fact]
    public void The_slopes_of_a_link_make_its_uncertainty()
    {
        Home home = Terrace.Home;
        Network network = Terrace.Plugs;
        MarginUncertainties uncertainties = new(home, network);
        IPathLossModel model = home.ModelOf(network, ModelName.Detour, null);
        Device[] devices = [.. home.DevicesOf(network)];
        int kinds = 0;
        foreach (Device to in devices.Skip(1))
        {
            PathLoss path = model.Between(home.PositionOf(devices[0]), home.PositionOf(to));
            var slopes = uncertainties.SlopesOf(path, devices[0].Mounting, to.Mounting);
            double variance = slopes.Sum(first => slopes.Sum(second => first.DeviationDb * second.DeviationDb * uncertainties.Correlation(first.Unknown, second.Unknown)));
            Math.Sqrt(variance).Should().BeApproximately(uncertainties.Of(path, devices[0].Mounting, to.Mounting).Losses.Value, Rounding);
            kinds = Math.Max(kinds, slopes.Select(slope => slope.Unknown.Kind).Distinct().Count());
        }

        kinds.Should().BeGreaterThan(2, "exponent, constructions and mountings must have a say");
    }

    [Fact]
    public void What_was_fitted_together_is_correlated()
    {
        NetworkFit fit = new()
        {
            Model = ModelName.Detour,
            Readings = 9,
            Shadowing = new(4),
            Parameters = [new(FittedKind.Exponent, "", 2, 0.1, 9), new(FittedKind.Construction, "brick-half", 1, 0.5, 9)],
            Correlations = [[-0.6]],
        };
        MarginUncertainties uncertainties = new(Terrace.Home, Terrace.Plugs with { Fit = fit });
        LossUnknown exponent = new(FittedKind.Exponent, ""), brick = new(FittedKind.Construction, "brick-half"), other = new(FittedKind.Construction, "cavity-brick");
        uncertainties.Correlation(exponent, brick).Should().Be(-0.6);
        uncertainties.Correlation(brick, other).Should().Be(0);
        uncertainties.Correlation(other, other).Should().Be(1);
        uncertainties.Correlation(new(FittedKind.Detour, ""), exponent).Should().Be(0);
    }
}
