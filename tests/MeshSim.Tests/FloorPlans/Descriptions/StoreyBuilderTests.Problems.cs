using MeshSim.FloorPlans.Descriptions;
using MeshSim.FloorPlans.Geometry;
using static MeshSim.Tests.FloorPlans.Descriptions.StoreySketch;

namespace MeshSim.Tests.FloorPlans.Descriptions;

public sealed partial class StoreyBuilderTests
{
    private static readonly RoomDescription Hall = Room("hall", 0, 0, 4, 4);

    [Theory]
    [InlineData(0)]
    [InlineData(-2.4)]
    [InlineData(double.NaN)]
    public void A_ceiling_at_or_below_the_floor(double ceilingMetres)
    {
        FloorPlanProblem problem = OnlyProblem(Storey(Hall) with { CeilingMetres = ceilingMetres, Source = new(3) });

        problem.Source.Should().Be(new SourceKey(3));
        problem.Aspect.Should().Be(Aspect.Height);
    }

    [Fact]
    public void Overlapping_rooms() =>
        OnlyProblem(Storey(Hall, Room("kitchen", 3.9, 1, 6, 3, source: 2))).Should().Be(new FloorPlanProblem(
            new(2),
            Aspect.Outline,
            "\"kitchen\" overlaps \"hall\" near (4, 0)",
            "outlines along the centre lines of walls, so that neighbours share an edge"));

    [Theory]
    [InlineData(0, 0, 4, 4)] // the same again
    [InlineData(1, 1, 2, 2)] // one within the other
    [InlineData(-1, -1, 5, 5)] // one around the other
    [InlineData(0, 0, 2, 4)] // half of it, three edges shared
    [InlineData(1, 0, 3, 4)] // a strip of it, no corner shared
    [InlineData(-1, 1, 5, 2)] // a cross
    public void Overlapping_rooms_of_every_kind(double x1Metres, double y1Metres, double x2Metres, double y2Metres) =>
        OnlyProblem(Storey(Hall, Room("other", x1Metres, y1Metres, x2Metres, y2Metres))).Wrong.Should().StartWith("\"other\" overlaps \"hall\"");

    [Fact]
    public void A_self_crossing_outline() =>
        OnlyProblem(Storey(Room("hall", (0, 0), (4, 4), (4, 0), (0, 4)))).Wrong.Should()
            .Be("the outline of \"hall\" meets itself: (0, 0) to (4, 4) and (4, 0) to (0, 4)");

    [Fact]
    public void An_outline_that_folds_back_on_itself() =>
        OnlyProblem(Storey(Room("hall", (0, 0), (4, 0), (4, 4), (4, 1), (0, 1)))).Wrong.Should().StartWith("the outline of \"hall\" meets itself");

    [Fact]
    public void A_room_without_area()
    {
        OnlyProblem(Storey(Room("hall", (0, 0), (1, 1), (2, 2)))).Wrong.Should().Be("\"hall\" has no area");
        OnlyProblem(Storey(Room("hall", 1, 1, 1, 3))).Wrong.Should().Be("\"hall\" has no area");
        OnlyProblem(Storey(Room("hall", (0, 0), (1, 1)))).Wrong.Should().Be("\"hall\" has no area");
    }

    [Fact]
    public void Two_rooms_of_one_name() =>
        OnlyProblem(Storey(Hall, Room("hall", 4, 0, 6, 4, source: 2))).Should().Match<FloorPlanProblem>(p => p.Source == new SourceKey(2) && p.Aspect == Aspect.Name);

    [Fact]
    public void A_wall_without_length() =>
        OnlyProblem(Storey(Hall) with { Walls = [new(new(4), new WallPlace.Line(Point(1, 1), Point(1, 1)), Stone)] })
            .Should().Be(new FloorPlanProblem(new(4), Aspect.Outline, "the wall at (1, 1) has no length", "two different ends"));

    [Fact]
    public void Walls_that_nothing_says_the_construction_of()
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(Hall, Room("kitchen", 4, 0, 6, 4)) with { Outer = null, Inner = null });

        built.Problems.Select(problem => problem.Aspect).Should().Equal(Aspect.Outer, Aspect.Inner);
    }

    [Theory]
    [InlineData(1, 1, 3, 3, true)]
    [InlineData(0, 0, 4, 4, true)]
    [InlineData(3, 1, 5, 3, true)] // across the line between two rooms
    [InlineData(-0.03, 1, 1, 3, true)] // within the snapping tolerance
    [InlineData(-0.5, 1, 1, 3, false)]
    [InlineData(5, 2, 7, 3, false)]
    [InlineData(5, 3, 5.5, 5, false)]
    [InlineData(20, 20, 21, 21, false)]
    public void A_stairwell_must_lie_within_the_rooms(double x1Metres, double y1Metres, double x2Metres, double y2Metres, bool isSound)
    {
        StoreyBuilt built = BuildWithStairwell(x1Metres, y1Metres, x2Metres, y2Metres, Hall, Room("kitchen", 4, 0, 6, 4));

        built.Storey.Floor!.Stairwells.Should().HaveCount(isSound ? 1 : 0);
        built.Problems.Select(problem => problem.Wrong).Should().Equal(
            isSound ? [] : ["the stairwell of \"ground\" reaches outside the rooms of that storey"]);
    }

    [Fact]
    public void A_stairwell_around_a_gap_between_rooms_is_a_problem()
    {
        StoreyBuilt built = BuildWithStairwell(
            0.5, 0.5, 5.5, 5.5, Room("south", 0, 0, 6, 1), Room("north", 0, 5, 6, 6), Room("west", 0, 1, 1, 5), Room("east", 5, 1, 6, 5), Room("half", 1, 1, 3, 5));

        built.Problems.Should().ContainSingle().Which.Aspect.Should().Be(Aspect.Outline);
    }

    [Fact]
    public void A_floor_structure_without_thickness() =>
        OnlyProblem(Storey(Hall) with { Floor = new(new(6), new("joists"), 0, []) })
            .Should().Match<FloorPlanProblem>(p => p.Source == new SourceKey(6) && p.Aspect == Aspect.Thickness);

    [Fact]
    public void Objects_that_bend_inwards_stick_through_the_ceiling_or_have_no_height()
    {
        ObjectDescription Object(int source, double baseMetres, double heightMetres, params PlanPoint[] corners) =>
            new(new(source), "thing", [.. corners], baseMetres, heightMetres, new("metal"));
        PlanPoint[] square = [Point(1, 1), Point(2, 1), Point(2, 2), Point(1, 2)];
        StoreyBuilt built = StoreyBuilder.Build(Storey(Hall) with
        {
            Objects =
            [
                Object(1, 0, 1, Point(0, 0), Point(2, 1), Point(0, 2), Point(1, 1)),
                Object(2, 1, 1.5, square),
                Object(3, 0, 0, square),
                Object(4, -1, 1, square),
                Object(5, 0, 2.4, square),
            ],
        });

        built.Problems.Select(problem => (problem.Source.Value, problem.Aspect)).Should().Equal(
            (1, Aspect.Outline), (2, Aspect.Height), (3, Aspect.Height), (4, Aspect.Sill));
        built.Storey.Objects.Should().ContainSingle();
    }

    [Fact]
    public void What_refers_to_a_room_with_a_problem_of_its_own_is_not_reported_again()
    {
        OnlyProblem(Storey(Hall, Room("kitchen", 5, 0, 5, 4)) with
        {
            Walls = [new(default, Between("hall", "kitchen"), Stone)],
            Openings = [Door("door", SideOf("kitchen", CompassSide.East), 0, 1)],
        }).Wrong.Should().Be("\"kitchen\" has no area");
    }

    private static StoreyBuilt BuildWithStairwell(double x1Metres, double y1Metres, double x2Metres, double y2Metres, params RoomDescription[] rooms) =>
        StoreyBuilder.Build(Storey(rooms) with
        {
            Floor = new(default, new("joists"), 0.3, [new(default, Polygon.Rectangle(Point(x1Metres, y1Metres), Point(x2Metres, y2Metres)).Corners)]),
        });

    private static FloorPlanProblem OnlyProblem(StoreyDescription description) => StoreyBuilder.Build(description).Problems.Should().ContainSingle().Subject;
}
