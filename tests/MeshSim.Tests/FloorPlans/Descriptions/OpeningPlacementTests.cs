using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;
using static MeshSim.Tests.FloorPlans.Descriptions.StoreySketch;

namespace MeshSim.Tests.FloorPlans.Descriptions;

public sealed class OpeningPlacementTests
{
    // Offsets are sums of a few decimal figures.
    private const double OffsetTolerance = 1e-9;

    private static readonly StoreyDescription Flat = Storey(
        Room("hall", 0, 0, 2, 6), Room("kitchen", 2, 0, 5, 2.5), Room("lounge", 2, 2.5, 5, 6));

    [Fact]
    public void A_door_between_two_rooms_is_measured_along_the_wall_that_they_share()
    {
        Storey storey = Sound(Flat with { Openings = [Door("lounge door", Between("lounge", "hall"), 0.5, 0.8)] });

        Wall wall = storey.Walls.Single(wall => wall.Name == "hall | lounge");
        wall.Start.Should().Be(Point(2, 2.5));
        wall.Openings.Should().ContainSingle().Which.Should().Be(new Opening
        {
            Name = "lounge door",
            Kind = OpeningKind.Door,
            OffsetMetres = 0.5,
            WidthMetres = 0.8,
            HeightMetres = 2,
            Construction = Oak,
        });
    }

    [Fact]
    public void A_door_in_a_side_of_several_pieces_is_measured_along_the_whole_side()
    {
        Storey storey = Sound(Flat with { Openings = [Door("lounge door", SideOf("hall", CompassSide.East), 3, 0.8)] });

        storey.Walls.Single(wall => wall.Name == "hall | lounge").Openings.Should().ContainSingle()
            .Which.OffsetMetres.Should().BeApproximately(0.5, OffsetTolerance);
    }

    [Fact]
    public void A_door_can_name_its_wall_by_a_line_that_holds_it()
    {
        Storey storey = Sound(Flat with { Openings = [Door("door", new WallPlace.Line(Point(2, 6), Point(2, 0)), 3, 0.8)] });

        storey.Walls.Single(wall => wall.Name == "hall | lounge").Openings.Should().ContainSingle()
            .Which.OffsetMetres.Should().BeApproximately(0.5, OffsetTolerance);
        StoreyBuilder.Build(Flat with { Openings = [Door("door", new WallPlace.Line(Point(3, 6), Point(3, 0)), 3, 0.8)] })
            .Problems.Should().ContainSingle().Which.Wrong.Should().Be("no wall lies on the line (3, 6) to (3, 0)");
    }

    [Fact]
    public void Doors_of_one_wall_are_kept_in_order_however_they_were_listed()
    {
        Storey storey = Sound(Flat with
        {
            Openings = [Door("b", Between("hall", "lounge"), 2, 0.8), Door("a", Between("hall", "lounge"), 0, 0.8), Door("c", Between("hall", "lounge"), 2.8, 0.7)],
        });

        storey.Walls.Single(wall => wall.Name == "hall | lounge").Openings.Select(opening => opening.Name).Should().Equal("a", "b", "c");
    }

    [Fact]
    public void A_side_in_two_steps_is_measured_along_their_common_direction()
    {
        RoomDescription stepped = Room("lounge", (0, 0), (4, 0), (4, 2), (3, 2), (3, 5), (0, 5));
        Storey storey = Sound(Storey(stepped) with { Openings = [Door("garden door", SideOf("lounge", CompassSide.East), 2.5, 1)] });

        Wall wall = storey.Walls.Single(wall => wall.Openings.Length > 0);
        wall.Start.Should().Be(Point(3, 2));
        wall.Openings[0].OffsetMetres.Should().BeApproximately(0.5, OffsetTolerance);
    }

    [Theory]
    [InlineData(2, 0.8, Aspect.Offset, "*\"door\", 2 to 2.8 m, does not lie within one piece*", "*0 to 2.5 m and 2.5 to 6 m*")]
    [InlineData(5.5, 0.8, Aspect.Offset, "*5.5 to 6.3 m*", "*0 to 2.5 m and 2.5 to 6 m*")]
    [InlineData(0, 3.6, Aspect.Width, "*0 to 3.6 m*", "*0 to 2.5 m and 2.5 to 6 m*")]
    [InlineData(-1, 0.8, Aspect.Offset, "*begins -1 m*", "0 m or more")]
    [InlineData(double.NaN, 0.8, Aspect.Offset, "*NaN*", "0 m or more")]
    [InlineData(0, 0, Aspect.Width, "*0 m wide*", "more than 0 m")]
    public void A_door_that_does_not_fit_is_a_problem_with_what_would_fit(double offsetMetres, double widthMetres, Aspect aspect, string wrong, string right)
    {
        StoreyBuilt built = StoreyBuilder.Build(Flat with { Openings = [Door("door", SideOf("hall", CompassSide.East), offsetMetres, widthMetres, source: 9)] });

        FloorPlanProblem problem = built.Problems.Should().ContainSingle().Subject;
        problem.Source.Should().Be(new SourceKey(9));
        problem.Aspect.Should().Be(aspect);
        problem.Wrong.Should().Match(wrong);
        problem.Right.Should().Match(right);
        built.Storey.Walls.Should().OnlyContain(wall => wall.Openings.IsEmpty);
    }

    [Fact]
    public void Overlapping_doors_are_a_problem_of_the_later_one_and_touching_doors_are_not()
    {
        StoreyBuilt built = StoreyBuilder.Build(Flat with
        {
            Openings =
            [
                Door("first", Between("hall", "lounge"), 0.5, 0.8),
                Door("second", Between("hall", "lounge"), 1.2, 0.8, source: 2),
                Door("third", Between("hall", "lounge"), 1.3, 0.8),
            ],
        });

        FloorPlanProblem problem = built.Problems.Should().ContainSingle().Subject;
        problem.Source.Should().Be(new SourceKey(2));
        problem.Wrong.Should().Be("\"second\" overlaps \"first\"");
        problem.Right.Should().Be("\"first\" takes 0.5 to 1.3 m of the wall");
    }

    [Fact]
    public void A_head_above_the_ceiling_is_a_problem()
    {
        StoreyBuilt built = StoreyBuilder.Build(Flat with { Openings = [Door("door", Between("hall", "lounge"), 0, 0.8) with { SillMetres = 0.5 }] });

        FloorPlanProblem problem = built.Problems.Should().ContainSingle().Subject;
        problem.Aspect.Should().Be(Aspect.Height);
        problem.Wrong.Should().Be("the head of \"door\" lies 2.5 m above the floor, higher than the ceiling");
        problem.Right.Should().Be("at most 2.4 m");
    }

    [Fact]
    public void A_wall_that_is_not_there_is_answered_with_the_walls_that_are()
    {
        StoreyBuilt built = StoreyBuilder.Build(Flat with
        {
            Rooms = Flat.Rooms.Add(Room("shed", 9, 0, 11, 2)),
            Openings =
            [
                Door("a", Between("hall", "shed"), 0, 0.8),
                Door("b", Between("hall", "attic"), 0, 0.8),
                Door("c", SideOf("shed", CompassSide.NorthEast), 0, 0.8),
                Door("d", new WallPlace.Named("hall | kitchn"), 0, 0.8),
            ],
        });

        built.Problems.Select(problem => problem.Aspect).Should().OnlyContain(aspect => aspect == Aspect.Place);
        built.Problems.Select(problem => $"{problem.Wrong}; {problem.Right}").Should().SatisfyRespectively(
            a => a.Should().Be("\"hall\" and \"shed\" share no wall; \"hall\" shares a wall with \"kitchen\", \"lounge\""),
            b => b.Should().Be("no room of this storey is called \"attic\"; the rooms are \"hall\", \"kitchen\", \"lounge\", \"shed\""),
            c => c.Should().Be("\"shed\" has no wall that faces north-east; its walls face north, east, south, west"),
            d => d.Should().StartWith("no wall is called \"hall | kitchn\"; the walls are \"hall, south\", \"hall | kitchen\""));
    }

    [Fact]
    public void A_side_whose_walls_lie_side_by_side_is_a_problem_where_both_could_be_meant()
    {
        RoomDescription bracket = Room("bracket", (0, 0), (3, 0), (3, 1), (1, 1), (1, 2), (3, 2), (3, 3), (0, 3), (0, 2.5), (-1, 2.5), (-1, 0.5), (0, 0.5));
        StoreyBuilt built = StoreyBuilder.Build(Storey(bracket) with
        {
            Openings = [Door("south door", SideOf("bracket", CompassSide.South), 2.5, 0.5)],
        });

        // Facing south: a ledge (x from -1 to 0), the outer edge (0 to 3) and the upper edge of the notch (1 to 3); the offset runs from x = -1.
        built.Problems.Should().ContainSingle().Which.Wrong.Should().Be("\"south door\" could sit in any of 2 walls that lie side by side");
    }
}
