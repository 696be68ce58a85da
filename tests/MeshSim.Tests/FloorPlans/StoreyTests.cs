using MeshSim.FloorPlans;
using static MeshSim.Tests.FloorPlans.Descriptions.StoreySketch;

namespace MeshSim.Tests.FloorPlans;

public sealed class StoreyTests
{
    private static readonly Storey Flat = Sound(Storey(Room("hall", 0, 0, 2, 3), Room("kitchen", 2, 0, 5, 3)));

    [Theory]
    [InlineData(1, 1, "hall")]
    [InlineData(2, 1, "hall")] // on the wall between: the first listed
    [InlineData(2.0001, 1, "kitchen")]
    [InlineData(5, 3, "kitchen")]
    [InlineData(5.0001, 3, null)]
    public void A_point_belongs_to_the_first_room_that_holds_it(double xMetres, double yMetres, string? room)
    {
        Flat.RoomAt(Point(xMetres, yMetres))?.Name.Value.Should().Be(room);
        Flat.Contains(Point(xMetres, yMetres)).Should().Be(room is not null);
    }

    [Fact]
    public void Without_rooms_the_inside_is_the_rectangle_around_the_walls()
    {
        Storey lines = Flat with { Rooms = [] };

        lines.Contains(Point(5, 3)).Should().BeTrue();
        lines.Contains(Point(5, 3.0001)).Should().BeFalse();
        (lines with { Walls = [] }).Contains(Point(1, 1)).Should().BeFalse();
    }

    [Fact]
    public void The_nearest_wall_is_measured_to_its_line_or_its_end()
    {
        Flat.DistanceMetresToNearestWall(Point(0.5, 1.5)).Should().Be(0.5);
        Flat.DistanceMetresToNearestWall(Point(8, 7)).Should().Be(5);
        (Flat with { Walls = [] }).DistanceMetresToNearestWall(Point(1, 1)).Should().Be(double.PositiveInfinity);
    }
}
