using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.Drawing.Walls;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing.Tests.Walls;

public sealed class WallRunTests
{
    private static readonly Projection HundredPerMetre = new(100, new(0, 1000));
    private static readonly Storey Ground = TwoStoreyFlat.Home.FloorPlan.Storey(TwoStoreyFlat.Ground);

    [Theory]
    [InlineData("kitchen, east", 27)]
    [InlineData("living room | kitchen", 13)]
    [InlineData("living room | hall", 10)]
    public void A_wall_is_as_thick_as_its_layers(string name, float pixels) =>
        RunOf(name, HundredPerMetre).ThicknessPixels.Should().BeApproximately(pixels, 0.001f, "the sum of layers is in single precision here");

    [Fact]
    public void An_outer_wall_stays_heavier_than_an_inner_one_at_a_small_scale()
    {
        var small = new Projection(5, new(0, 100));

        RunOf("kitchen, east", small).ThicknessPixels.Should().BeGreaterThan(RunOf("living room | hall", small).ThicknessPixels);
    }

    [Fact]
    public void Openings_part_the_wall_and_its_ends_reach_the_corners()
    {
        Wall wall = Ground.Walls.Single(wall => wall.Name == "kitchen, east");

        (float From, float To)[] solid = [.. WallRun.Of(wall, TwoStoreyFlat.Home, HundredPerMetre).Solid(wall, HundredPerMetre)];

        solid.Should().HaveCount(2);
        solid[0].From.Should().BeApproximately(-13.5f, 0.001f, "half of 27 pixels in single precision");
        solid[0].To.Should().BeApproximately(190, 0.001f, "the door begins at 1.9 m");
        solid[1].From.Should().BeApproximately(280, 0.001f, "the door is 0.9 m wide");
    }

    [Fact]
    public void Left_of_a_wall_that_runs_up_the_plan_is_left_on_the_sheet() =>
        RunOf("kitchen, east", HundredPerMetre).Normal.Should().Be(new Pixel(-1, 0));

    private static WallRun RunOf(string name, Projection projection) =>
        WallRun.Of(Ground.Walls.Single(wall => wall.Name == name), TwoStoreyFlat.Home, projection);
}
