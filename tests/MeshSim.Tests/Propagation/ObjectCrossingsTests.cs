using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using static MeshSim.Tests.Propagation.PlanSketch;

namespace MeshSim.Tests.Propagation;

/// <summary>Objects, on squared paper.</summary>
public sealed class ObjectCrossingsTests
{
    private static readonly BlockingObject Fridge = new()
    {
        Name = "fridge",
        Footprint = Polygon.Rectangle(Point(1, 1), Point(2, 2)),
        HeightMetres = 1.8,
        Construction = Metal,
    };

    [Theory]
    [InlineData(0, 1.5, 1, 3, 1.5, 1, true)] // through
    [InlineData(1.5, 1.5, 1, 3, 1.5, 1, true)] // from within
    [InlineData(1.2, 1.2, 1, 1.8, 1.8, 1, true)] // wholly within
    [InlineData(0, 2, 1, 3, 2, 1, true)] // along a face
    [InlineData(0, 1, 1, 2, 3, 1, true)] // touching a corner
    [InlineData(0, 1.0002, 1, 2, 3.0002, 1, false)] // just past the corner
    [InlineData(0, 1.5, 1.8, 3, 1.5, 1.8, true)] // along its top
    [InlineData(0, 1.5, 1.8001, 3, 1.5, 1.8001, false)] // over it
    [InlineData(1.5, 1.5, 2, 1.5, 1.5, 3, false)] // straight up from above it
    [InlineData(1.5, 1.5, 1.8, 1.5, 1.5, 2, true)] // straight up from its top
    [InlineData(0, 1.5, 2.8, 2, 1.5, 0.8, true)] // slanting down onto its top at x = 1, touching the edge
    [InlineData(0, 1.5, 3.9, 2, 1.5, 1.8001, false)] // slanting down past it
    public void A_path_that_meets_an_object_anywhere_meets_it_once(
        double x1Metres, double y1Metres, double z1Metres, double x2Metres, double y2Metres, double z2Metres, bool isMet)
    {
        FloorPlan plan = Plan(Storey() with { Objects = [Fridge] });

        string[] expected = isMet ? ["fridge Object 1"] : [];
        Trace(plan, At(x1Metres, y1Metres, z1Metres), At(x2Metres, y2Metres, z2Metres)).Should().Equal(expected);
    }

    [Fact]
    public void An_object_counts_the_same_whichever_way_round_its_corners_run()
    {
        var clockwise = new Polygon([.. Fridge.Footprint.Corners.Reverse()]);

        Trace(Plan(Storey() with { Objects = [Fridge with { Footprint = clockwise }] }), At(0, 1.5, 1), At(3, 1.5, 1)).Should().Equal("fridge Object 1");
    }

    [Fact]
    public void A_footprint_that_bends_inwards_is_refused()
    {
        var arrow = new Polygon([Point(0, 0), Point(2, 1), Point(0, 2), Point(1, 1)]);
        Action make = () => _ = new CrossingTracer(Plan(Storey() with { Objects = [Fridge with { Footprint = arrow }] }));

        make.Should().Throw<ArgumentException>().WithMessage("*\"fridge\"*not convex*");
    }
}
