using MeshSim.FloorPlans;
using MeshSim.Propagation;
using static MeshSim.Tests.Propagation.PlanSketch;

namespace MeshSim.Tests.Propagation;

/// <summary>Cases that a reader can check on squared paper.</summary>
public sealed partial class CrossingTracerTests
{
    // Cosines are one square root and one division away from whole numbers.
    private const double CosineTolerance = 1e-14;

    private static readonly Wall Straight = Wall("wall", Point(2, 0), Point(2, 4));

    [Fact]
    public void A_path_square_through_a_wall_meets_it_once_head_on()
    {
        var tracer = new CrossingTracer(Plan(Straight));
        var crossings = new List<Crossing>();

        tracer.Trace(At(0, 1, 1), At(4, 1, 1), crossings);

        Crossing crossing = crossings.Should().ContainSingle().Subject;
        crossing.Kind.Should().Be(LossKind.Wall);
        crossing.Weight.Should().Be(1);
        crossing.Cosine.Should().Be(1);
        crossing.Share.Should().Be(0.5);
        tracer.NameOf(crossing).Should().Be("wall");
        tracer.Constructions[crossing.Construction].Should().Be(Brick);
    }

    [Fact]
    public void The_list_is_emptied_before_it_is_filled()
    {
        var tracer = new CrossingTracer(Plan(Straight));
        var crossings = new List<Crossing>();

        tracer.Trace(At(0, 1, 1), At(4, 1, 1), crossings);
        tracer.Trace(At(0, 1, 1), At(1, 1, 1), crossings);

        crossings.Should().BeEmpty();
    }

    [Theory]
    [InlineData(4, 0, 0.7071067811865476)]
    [InlineData(0, 4, 0.7071067811865476)]
    [InlineData(3, 0, 0.8)]
    public void The_angle_is_the_one_in_space(double alongMetres, double upMetres, double cosine)
    {
        // The path goes 4 m across the wall, some way along it, some way up.
        var tall = new Storey { Name = new("hall"), ElevationMetres = 0, CeilingMetres = 10, Walls = [Wall("wall", Point(2, -9), Point(2, 9))] };
        var crossings = new List<Crossing>();

        new CrossingTracer(Plan(tall)).Trace(At(0, 0, 1), At(4, alongMetres, 1 + upMetres), crossings);

        crossings.Should().ContainSingle().Which.Cosine.Should().BeApproximately(cosine, CosineTolerance);
    }

    [Theory]
    [InlineData(0.5, "wall Wall 1")]
    [InlineData(0.8999, "wall Wall 1")]
    [InlineData(0.9, "sink window Window 1")]
    [InlineData(1.5, "sink window Window 1")]
    [InlineData(2.0999, "sink window Window 1")]
    [InlineData(2.1, "wall Wall 1")]
    public void A_window_begins_at_its_sill_and_ends_below_its_head(double heightMetres, string met)
    {
        FloorPlan plan = Plan(Wall("wall", Point(2, 0), Point(2, 4), Window("sink window", 1, 2, sillMetres: 0.9, heightMetres: 1.2)));

        Trace(plan, At(0, 2, heightMetres), At(4, 2, heightMetres)).Should().Equal(met);
    }

    [Fact]
    public void A_sloping_path_meets_a_window_at_the_height_that_it_has_there()
    {
        FloorPlan plan = Plan(Wall("wall", Point(2, 0), Point(2, 4), Window("window", 1, 2, sillMetres: 0.9, heightMetres: 1.2)));

        // Half-way between 0.2 and 1.6 m is the sill itself; a step lower at one end passes below it.
        Trace(plan, At(0, 2, 0.2), At(4, 2, 1.6)).Should().Equal("window Window 1");
        Trace(plan, At(0, 2, 0.2), At(4, 2, 1.5999)).Should().Equal("wall Wall 1");
    }

    [Fact]
    public void A_path_over_the_ceiling_or_under_the_floor_meets_no_wall()
    {
        Trace(Plan(Straight), At(0, 1, CeilingMetres), At(4, 1, CeilingMetres)).Should().BeEmpty();
        Trace(Plan(Straight), At(0, 1, -0.0001), At(4, 1, -0.0001)).Should().BeEmpty();
        Trace(Plan(Straight), At(0, 1, 0), At(4, 1, 0)).Should().Equal("wall Wall 1");
    }

    [Fact]
    public void An_open_door_is_nothing_and_the_wall_above_it_stays()
    {
        FloorPlan plan = Plan(Wall("wall", Point(2, 0), Point(2, 4), Door("door", 1, 1) with { IsOpen = true }));

        Trace(plan, At(0, 1.5, 1), At(4, 1.5, 1)).Should().BeEmpty();
        Trace(plan, At(0, 1.5, 2.2), At(4, 1.5, 2.2)).Should().Equal("wall Wall 1");
    }

    [Fact]
    public void A_path_exactly_through_a_jamb_meets_half_a_wall_and_half_a_door()
    {
        FloorPlan plan = Plan(Wall("wall", Point(2, 0), Point(2, 4), Door("door", 1, 1)));

        Trace(plan, At(0, 1, 1), At(4, 1, 1)).Should().Equal("wall Wall 0.5", "door Door 0.5");
    }

    [Fact]
    public void A_path_through_the_corner_of_two_walls_meets_half_of_each()
    {
        FloorPlan plan = Plan(Wall("east", Point(2, 0), Point(2, 2)), Wall("north", Point(0, 2), Point(2, 2)));

        // A little to one side it would meet both, to the other none.
        Trace(plan, At(1, 3, 1), At(3, 1, 1)).Should().Equal("east Wall 0.5", "north Wall 0.5");
    }

    [Fact]
    public void A_path_through_a_T_joint_meets_the_long_wall_once_and_half_of_the_short_one()
    {
        FloorPlan plan = Plan(Wall("left", Point(0, 2), Point(2, 2)), Wall("right", Point(2, 2), Point(4, 2)), Wall("stem", Point(2, 0), Point(2, 2)));

        Trace(plan, At(1, 1, 1), At(3, 3, 1)).Should().Equal("left Wall 0.5", "right Wall 0.5", "stem Wall 0.5");
    }

    [Fact]
    public void A_path_along_a_wall_does_not_meet_it()
    {
        Trace(Plan(Straight), At(2, -1, 1), At(2, 5, 1)).Should().BeEmpty();
        Trace(Plan(Straight), At(2, 1, 1), At(2, 3, 1)).Should().BeEmpty();
    }

    [Fact]
    public void A_device_exactly_on_a_wall_meets_half_of_it()
    {
        Trace(Plan(Straight), At(2, 1, 1), At(4, 1, 1)).Should().Equal("wall Wall 0.5");
        Trace(Plan(Straight), At(0, 1, 1), At(2, 1, 1)).Should().Equal("wall Wall 0.5");
    }

    [Fact]
    public void A_device_on_the_end_of_a_wall_meets_a_quarter_of_it_and_on_a_joint_two_quarters()
    {
        Trace(Plan(Straight), At(2, 4, 1), At(4, 3, 1)).Should().Equal("wall Wall 0.25");
        FloorPlan joined = Plan(Straight, Wall("next", Point(2, 4), Point(2, 8)));
        Trace(joined, At(2, 4, 1), At(4, 3, 1)).Should().Equal("wall Wall 0.25", "next Wall 0.25");
    }

    [Fact]
    public void A_path_that_ends_before_a_wall_does_not_meet_it()
    {
        Trace(Plan(Straight), At(0, 1, 1), At(1.9999, 1, 1)).Should().BeEmpty();
    }

    [Fact]
    public void Crossings_come_in_order_along_the_path_both_ways()
    {
        FloorPlan plan = Plan(Wall("c", Point(3, 0), Point(3, 4)), Wall("a", Point(1, 0), Point(1, 4)), Wall("b", Point(2, 0), Point(2, 4)));

        Trace(plan, At(0, 1, 1), At(4, 2, 1)).Should().Equal("a Wall 1", "b Wall 1", "c Wall 1");
        Trace(plan, At(4, 2, 1), At(0, 1, 1)).Should().Equal("c Wall 1", "b Wall 1", "a Wall 1");
    }

    [Fact]
    public void Constructions_are_listed_in_order_of_first_use()
    {
        FloorPlan plan = Plan(
            Wall("a", Point(0, 0), Point(4, 0), Door("door", 1, 1)) with { Construction = Stud },
            Wall("b", Point(0, 1), Point(4, 1)),
            Wall("c", Point(0, 2), Point(4, 2)) with { Construction = Stud });

        new CrossingTracer(plan).Constructions.Should().Equal(Stud, Oak, Brick);
    }

    [Fact]
    public void An_opening_that_reaches_beyond_its_wall_is_refused()
    {
        Action make = () => _ = new CrossingTracer(Plan(Wall("wall", Point(2, 0), Point(2, 4), Door("door", 3.5, 1))));

        make.Should().Throw<ArgumentException>().WithMessage("*\"door\"*\"wall\"*");
    }
}
