using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;
using static MeshSim.Tests.FloorPlans.Descriptions.StoreySketch;

namespace MeshSim.Tests.FloorPlans.Descriptions;

public sealed class LineSnappingTests
{
    [Theory]
    [InlineData(2.03)]
    [InlineData(1.97)]
    [InlineData(2 + LineSnapping.ToleranceMetres)]
    public void An_edge_that_nearly_meets_an_earlier_one_is_moved_onto_it_and_noted(double edgeMetres)
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(Room("hall", 0, 0, 2, 3), Room("kitchen", edgeMetres, 0, 5, 3, source: 7)));

        built.Problems.Should().BeEmpty();
        built.Storey.Walls.Should().ContainSingle(wall => wall.Name == "hall | kitchen");
        FloorPlanNotice notice = built.Notices.Should().ContainSingle().Subject;
        notice.Source.Should().Be(new SourceKey(7));
        notice.Text.Should().Be(FormattableString.Invariant(
            $"the edge of \"kitchen\" at x = {edgeMetres} moved by {Math.Abs(edgeMetres - 2):0.####} m to x = 2, in line with \"hall\""));
    }

    [Fact]
    public void What_lies_further_apart_stays_apart()
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(Room("hall", 0, 0, 2, 3), Room("kitchen", 2.0501, 0, 5, 3)));

        built.Problems.Should().BeEmpty();
        built.Notices.Should().NotContain(notice => notice.Text.Contains("moved", StringComparison.Ordinal));
        built.Storey.Walls.Should().HaveCount(8).And.OnlyContain(wall => wall.Construction == Outer);
    }

    [Fact]
    public void Corners_in_both_directions_are_brought_together_though_the_rooms_differ()
    {
        Storey storey = Sound(Storey(Room("hall", 0, 0, 2, 3), Room("kitchen", 2.02, 0.03, 5, 2.96), Room("store", 2.01, 2.98, 4, 5)));

        storey.Walls.Should().ContainSingle(wall => wall.Name == "hall | kitchen");
        storey.Rooms[1].Outline.Corners[0].Should().Be(Point(2, 0));
        storey.Walls.Single(wall => wall.Name == "kitchen | store").Start.Should().Be(Point(2, 3));
    }

    [Fact]
    public void A_niche_less_deep_than_the_tolerance_stays_a_niche()
    {
        RoomDescription niche = Room("hall", (0, 0), (2, 0), (2, 1), (2.04, 1), (2.04, 2), (2, 2), (2, 3), (0, 3));
        Storey storey = Sound(Storey(niche));

        storey.Rooms[0].Outline.Corners.Should().HaveCount(8);
    }

    [Fact]
    public void A_chain_of_near_misses_does_not_drift_beyond_the_tolerance()
    {
        // Each is 4 cm from the next; 8 cm from first to last.
        StoreyBuilt built = StoreyBuilder.Build(Storey(
            Room("a", 0, 0, 2, 1), Room("b", 0, 1, 2.04, 2), Room("c", 0, 2, 2.08, 3)));

        built.Problems.Should().BeEmpty();
        built.Storey.Rooms.Select(room => room.Outline.Corners[1].XMetres).Should().Equal(2, 2, 2.08);
    }

    [Fact]
    public void The_end_of_a_line_wall_is_brought_to_the_wall_that_it_nearly_reaches()
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(Room("hall", 0, 0, 4, 3)) with
        {
            Walls = [new(new(5), new WallPlace.Line(Point(2, 1), Point(2, 2.97)), Stone, "stub")],
        });

        built.Storey.Walls.Single(wall => wall.Name == "stub").End.Should().Be(Point(2, 3));
        built.Storey.Walls.Count(wall => wall.Name == "hall, north").Should().Be(2);
        built.Notices.Should().ContainSingle().Which.Source.Should().Be(new SourceKey(5));
    }

    [Fact]
    public void A_slanting_edge_bends_to_the_corner_that_it_nearly_meets_and_the_bend_is_noted()
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(
            Room("hall", (0, 0), (4, 2), (4, 4), (0, 4)),
            Room("porch", (0, 0), (0, -2), (2, -2), (2, 0.97))));

        built.Problems.Should().BeEmpty();
        built.Storey.Walls.Should().ContainSingle(wall => wall.Name == "hall | porch").Which.End.Should().Be(Point(2, 0.97));
        built.Notices.Should().ContainSingle().Which.Text.Should().Contain("bends by 0.0268 m").And.Contain("\"porch\"");
    }
}
