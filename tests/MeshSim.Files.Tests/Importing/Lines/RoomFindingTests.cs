using MeshSim.Files.Importing.Lines;

namespace MeshSim.Files.Tests.Importing.Lines;

public sealed class RoomFindingTests
{
    [Fact]
    public void Rooms_come_where_walls_close_the_lowest_and_leftmost_first()
    {
        EnclosedRooms found = RoomFinding.Find(PieceNoding.Cut([.. LineSketch.Ring((0, 0), (6, 0), (6, 4), (0, 4)), .. LineSketch.Walls(((2, 0), (2, 4)), ((2, 2), (6, 2)))], out _));

        found.Rooms.Select(LineSketch.BoxOf).Should().Equal(LineSketch.Box(0, 0, 2, 4), LineSketch.Box(2, 0, 6, 2), LineSketch.Box(2, 2, 6, 4));
        found.FreeEnds.Should().BeEmpty();
    }

    [Fact]
    public void Shafts_islands_and_free_ends_are_told_apart()
    {
        EnclosedRooms found = RoomFinding.Find(PieceNoding.Cut(
        [
            .. LineSketch.Ring((0, 0), (8, 0), (8, 8), (0, 8)),
            .. LineSketch.Ring((3, 3), (5, 3), (5, 5), (3, 5)),
            .. LineSketch.Ring((8, 0), (8.5, 0), (8.5, 1), (8, 1)),
            .. LineSketch.Walls(((0, 2), (1, 2))),
        ], out _));

        found.Holed.Should().ContainSingle();
        found.Small.Should().ContainSingle();
        found.Rooms.Select(LineSketch.BoxOf).Should().Equal(LineSketch.Box(3, 3, 5, 5));
        found.FreeEnds.Should().ContainSingle().Which.End.Should().Be(FloorPlans.Geometry.PlanPoint.FromMetres(1, 2));
    }
}
