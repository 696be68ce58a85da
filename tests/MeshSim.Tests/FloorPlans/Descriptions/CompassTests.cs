using MeshSim.FloorPlans.Descriptions;

namespace MeshSim.Tests.FloorPlans.Descriptions;

public sealed class CompassTests
{
    [Theory]
    [InlineData(0, 1, 0, CompassSide.North)]
    [InlineData(1, 0, 0, CompassSide.East)]
    [InlineData(0, -1, 0, CompassSide.South)]
    [InlineData(-1, 0, 0, CompassSide.West)]
    [InlineData(1, 1, 0, CompassSide.East)] // exactly between two: the clockwise one
    [InlineData(-1, 1, 0, CompassSide.North)]
    [InlineData(0, 1, 90, CompassSide.West)]
    [InlineData(0, 1, -90, CompassSide.East)]
    [InlineData(0, 1, 350, CompassSide.North)]
    [InlineData(0, 1, 720, CompassSide.North)]
    public void Every_direction_has_one_main_side(double dx, double dy, double northDegrees, CompassSide side) =>
        Compass.MainSide(dx, dy, northDegrees).Should().Be(side);

    [Fact]
    public void The_four_main_sides_and_the_eight_sides_each_cover_the_circle_once()
    {
        for (int degrees = 0; degrees < 360; degrees++)
        {
            (double dx, double dy) = Math.SinCos((degrees + 0.25) * Math.PI / 180);
            CompassSide[] facing = [.. Enum.GetValues<CompassSide>().Where(side => Compass.Faces(dx, dy, 0, side))];

            facing.Count(side => (int)side % 2 == 0).Should().Be(1);
            bool isDiagonal = Math.Abs((degrees % 90) + 0.25 - 45) < 22.5;
            facing.Count(side => (int)side % 2 == 1).Should().Be(isDiagonal ? 1 : 0);
        }
    }
}
