using MeshSim.Files.Importing.Lines;

namespace MeshSim.Files.Tests.Importing.Lines;

public sealed class GapBridgingTests
{
    private const double Snap = 0.05;

    [Fact]
    public void A_wall_goes_on_behind_a_door()
    {
        List<WallStretch> walls = GapBridging.Bridge(LineSketch.Walls(((3, 1), (5, 1)), ((0, 1), (2.1, 1))), [LineSketch.Of("door", [new(2.1, 1), new(3, 1)])], Snap);

        WallStretch wall = walls.Should().ContainSingle().Subject;
        (wall.Start, wall.End).Should().Be((new(0, 1), new(5, 1)));
    }

    [Fact]
    public void A_gap_without_a_door_stays_one() =>
        GapBridging.Bridge(LineSketch.Walls(((3, 1), (5, 1)), ((0, 1), (2.1, 1))), [LineSketch.Of("door", [new(2.1, 3), new(3, 3)])], Snap).Should().HaveCount(2);

    [Fact]
    public void A_wall_in_three_parts_becomes_one() =>
        GapBridging.Bridge(
            LineSketch.Walls(((0, 0), (1, 0)), ((4, 0), (6, 0)), ((3, 0), (2, 0))),
            [LineSketch.Of("door", [new(1, 0), new(2, 0)]), LineSketch.Of("window", [new(3.02, 0.1), new(3.98, -0.1)])],
            Snap).Should().ContainSingle().Which.LengthMetres.Should().BeApproximately(6, 1e-9);
}
