using MeshSim.Files.Importing.Svg;

namespace MeshSim.Files.Tests.Importing.Svg;

public sealed class SvgArcTests
{
    // 45° of an ellipse as a cubic curve: less than 5 millionths of the radius.
    private const double CircleTolerance = 5e-6;

    [Theory]
    [InlineData(false, false)]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [InlineData(true, true)]
    public void Each_of_the_four_arcs_keeps_its_radius_from_one_centre(bool isLarge, bool isPositive)
    {
        CurveStep[] steps = [.. SvgArc.Steps(new(0, 0), new(1, 1), 0, isLarge, isPositive, new(1, 1))];

        SvgPoint centre = isLarge == isPositive ? new(1, 0) : new(0, 1);
        if (isPositive) centre = isLarge ? new(1, 0) : new(0, 1);
        SvgPoint start = new(0, 0);
        foreach (CurveStep step in steps)
        {
            SvgPoint middle = (0.125 * start) + (0.375 * step.First) + (0.375 * step.Second) + (0.125 * step.End);
            (middle - centre).Length.Should().BeApproximately(1, CircleTolerance);
            start = step.End;
        }

        steps.Length.Should().Be(isLarge ? 6 : 2, "three quarters of a circle, or one");
        steps[^1].End.Should().Be(new SvgPoint(1, 1));
    }

    [Fact]
    public void Radii_too_small_for_the_ends_grow_until_they_reach()
    {
        CurveStep[] steps = [.. SvgArc.Steps(new(0, 0), new(0.5, 0.5), 0, false, true, new(4, 0))];

        steps.Should().HaveCount(4);
        steps[1].End.X.Should().BeApproximately(2, 1e-9);
        Math.Abs(steps[1].End.Y).Should().BeApproximately(2, 1e-9);
    }

    [Fact]
    public void Without_a_radius_it_is_straight() =>
        SvgArc.Steps(new(0, 0), new(0, 3), 0, false, true, new(4, 0)).Should().Equal(CurveStep.To(new(4, 0)));

    [Fact]
    public void Without_a_way_it_is_nothing() => SvgArc.Steps(new(1, 1), new(2, 3), 0, true, true, new(1, 1)).Should().BeEmpty();
}
