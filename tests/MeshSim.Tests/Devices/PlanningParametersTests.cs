using MeshSim.Devices;
using MeshSim.Radio;

namespace MeshSim.Tests.Devices;

public sealed class PlanningParametersTests
{
    [Fact]
    public void By_default_shadowing_alone_makes_the_design_margin() =>
        new PlanningParameters().DesignMargin.Should().Be(FadingMargin.LogNormal(new(5), 0.9));

    [Fact]
    public void Fading_comes_on_top_of_shadowing()
    {
        var planned = new PlanningParameters { Shadowing = new(8), Availability = 0.9 };
        (planned with { Fading = Fading.Rayleigh }).DesignMargin.Value.Should().BeApproximately(15.0284993266, 1e-9, "the published Suzuki margin has ten decimals");
        (planned with { Fading = Fading.Rician, SteadyToScattered = new(6) }).DesignMargin
            .Should().BeGreaterThan(planned.DesignMargin).And.BeLessThan((planned with { Fading = Fading.Rayleigh }).DesignMargin);
    }
}
