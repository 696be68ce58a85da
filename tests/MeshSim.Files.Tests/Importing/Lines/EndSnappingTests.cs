using MeshSim.Files.Importing.Lines;

namespace MeshSim.Files.Tests.Importing.Lines;

public sealed class EndSnappingTests
{
    [Fact]
    public void Ends_within_the_tolerance_meet_and_what_was_moved_is_told()
    {
        SnappedWalls snapped = EndSnapping.Snap(LineSketch.Walls(((0, 0), (4, 0)), ((4.03, 0.02), (4.03, 3))), 0.05);

        snapped.Walls[1].Start.Should().Be(snapped.Walls[0].End);
        snapped.Moved.Count.Should().Be(1);
        snapped.Moved.FarthestMetres.Should().BeApproximately(Math.Sqrt(0.0013), 1e-9);
    }

    [Theory]
    [InlineData(2.96)]
    [InlineData(3.04)]
    public void An_end_short_of_a_wall_or_beyond_it_is_moved_onto_it(double end)
    {
        SnappedWalls snapped = EndSnapping.Snap(LineSketch.Walls(((0, 3), (6, 3)), ((2, 0), (2, end))), 0.05);

        snapped.Walls[1].End.Should().Be(new MeshSim.Files.Importing.DrawnPoint(2, 3));
    }

    [Fact]
    public void Beyond_the_tolerance_nothing_moves() =>
        EndSnapping.Snap(LineSketch.Walls(((0, 3), (6, 3)), ((2, 0), (2, 2.9))), 0.05).Moved.Count.Should().Be(0);

    [Fact]
    public void What_shrinks_to_nothing_is_told() =>
        EndSnapping.Snap(LineSketch.Walls(((0, 0), (4, 0)), ((4, 0), (4.01, 0.01))), 0.05).Lost.Should().ContainSingle();
}
