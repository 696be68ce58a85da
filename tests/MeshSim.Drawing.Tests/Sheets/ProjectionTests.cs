using CsCheck;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Tests.Sheets;

public sealed class ProjectionTests
{
    /// <summary>
    /// Lattice steps of 0.1 mm. Places on the sheet are single-precision: at most 16,384 pixels need 14 of 24 bits, which leaves
    /// 1/1024 pixel; at the smallest scale of 5 pixels per metre that is two lattice steps, and rounding to the lattice adds one.
    /// </summary>
    private const int StepTolerance = 3;

    [Fact]
    public void A_place_on_the_plan_comes_back_from_the_sheet() =>
        Gen.Select(Gen.Int[-300_000, 300_000], Gen.Int[-300_000, 300_000], Gen.Double[5, 200]).Sample((x, y, scale) =>
        {
            var projection = new Projection(scale, new(6000, 6000));
            var point = new PlanPoint(x, y);

            PlanPoint back = projection.ToPlan(projection.ToPixel(point));

            back.X.Should().BeCloseTo(x, StepTolerance);
            back.Y.Should().BeCloseTo(y, StepTolerance);
        });

    [Fact]
    public void Up_the_plan_is_up_the_sheet()
    {
        var projection = new Projection(100, new(10, 500));

        projection.ToPixel(PlanPoint.FromMetres(1, 2)).Should().Be(new Pixel(110, 300));
    }

    [Fact]
    public void A_length_is_the_distance_of_two_places()
    {
        var projection = new Projection(80, new(3, 4));

        projection.Length(2.5).Should().Be(projection.ToPixel(new(0, 0)).DistanceTo(projection.ToPixel(PlanPoint.FromMetres(1.5, 2))));
    }
}
