using CsCheck;
using MeshSim.Files.Tables;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Tests.Tables;

public sealed class OffWallTests
{
    private static readonly Polygon Room = Outline((0, 0), (4, 0), (4, 2), (2, 2), (2, 4), (0, 4));

    [Theory]
    [InlineData(1, 0, 1, 0.05)]
    [InlineData(0, 0, 0.05, 0.05)]
    [InlineData(4, 2, 3.95, 1.95)]
    [InlineData(2, 2, 1.95, 1.95)]
    [InlineData(2, 3, 1.95, 3)]
    public void A_point_on_the_outline_moves_five_centimetres_in(double xMetres, double yMetres, double expectedX, double expectedY)
    {
        PlanPoint? expected = PlanPoint.FromMetres(expectedX, expectedY), point = PlanPoint.FromMetres(xMetres, yMetres);

        OffWall.Move(Room, point.Value).Should().Be(expected);
        OffWall.Move(new Polygon([.. Room.Corners.Reverse()]), point.Value).Should().Be(expected);
    }

    [Fact]
    public void A_narrow_room_takes_less_and_a_slit_nothing()
    {
        OffWall.Move(Outline((0, 0), (1, 0), (1, 0.04), (0, 0.04)), PlanPoint.FromMetres(0.5, 0)).Should().Be(PlanPoint.FromMetres(0.5, 0.025));
        OffWall.Move(Outline((0, 0), (1, 0), (1, 0.001), (0, 0.001)), PlanPoint.FromMetres(0.5, 0)).Should().BeNull();
    }

    [Fact]
    public void The_corner_of_any_triangle_moves_inside() =>
        Gen.Select(Gen.Int[1, 90_000], Gen.Int[1, 90_000], Gen.Int[20_000, 90_000]).Sample((x, width, height) =>
        {
            Polygon triangle = new([new(0, 0), new(width + 20_000, 0), new(x, height)]);
            return OffWall.Move(triangle, new(0, 0)) is { } moved && triangle.Locate(PathPoint.At(moved)) == Location.Inside;
        });

    private static Polygon Outline(params (double X, double Y)[] corners) => new([.. corners.Select(corner => PlanPoint.FromMetres(corner.X, corner.Y))]);
}
