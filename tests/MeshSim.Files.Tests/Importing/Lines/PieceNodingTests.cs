using MeshSim.Files.Importing.Lines;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Tests.Importing.Lines;

public sealed class PieceNodingTests
{
    [Fact]
    public void Walls_are_cut_where_others_end_on_them_or_cross_them()
    {
        List<WallPart> parts = PieceNoding.Cut(LineSketch.Walls(((0, 0), (6, 0)), ((2, 0), (2, 3)), ((4, -1), (4, 1))), out int twice);

        parts.Select(part => (part.Start, part.End)).Should().Equal(
            (P(0, 0), P(2, 0)), (P(2, 0), P(4, 0)), (P(4, 0), P(6, 0)), (P(2, 0), P(2, 3)), (P(4, -1), P(4, 0)), (P(4, 0), P(4, 1)));
        twice.Should().Be(0);
    }

    [Fact]
    public void What_two_walls_have_in_common_is_taken_once()
    {
        List<WallPart> parts = PieceNoding.Cut(LineSketch.Walls(((0, 0), (4, 0)), ((6, 0), (2, 0))), out int twice);

        parts.Select(part => (part.Start, part.End)).Should().Equal((P(0, 0), P(2, 0)), (P(2, 0), P(4, 0)), (P(6, 0), P(4, 0)));
        twice.Should().Be(1);
    }

    [Fact]
    public void Slanting_walls_share_the_point_where_they_cross()
    {
        List<WallPart> parts = PieceNoding.Cut(LineSketch.Walls(((0, 0), (3, 1)), ((0, 1), (3, 0.1))), out _);

        parts.Should().HaveCount(4);
        parts.SelectMany(part => new[] { part.Start, part.End }).GroupBy(end => end).Count(group => group.Count() == 4).Should().Be(1);
    }

    private static PlanPoint P(double x, double y) => PlanPoint.FromMetres(x, y);
}
