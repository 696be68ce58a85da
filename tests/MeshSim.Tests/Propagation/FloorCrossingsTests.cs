using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using static MeshSim.Tests.Propagation.PlanSketch;

namespace MeshSim.Tests.Propagation;

/// <summary>Floor structures, on squared paper.</summary>
public sealed class FloorCrossingsTests
{
    // The floor lies from 2.4 to 2.7 m, its mid-plane at 2.55 m.
    private static readonly Storey Upper = new()
    {
        Name = new("first"),
        ElevationMetres = 2.7,
        CeilingMetres = CeilingMetres,
        Floor = new(Joists, 0.3, [new(Polygon.Rectangle(Point(1, 1), Point(2, 3)))]),
        Rooms =
        [
            new(new("landing"), Polygon.Rectangle(Point(0, 0), Point(4, 4))),
            new(new("bedroom"), Polygon.Rectangle(Point(4, 0), Point(8, 4))),
        ],
    };

    private static readonly Storey Lower = Storey() with { Rooms = [new(new("hall"), Polygon.Rectangle(Point(0, 0), Point(8, 4)))] };

    private static readonly FloorPlan House = Plan(Lower, Upper);

    [Fact]
    public void A_path_straight_up_meets_the_floor_head_on()
    {
        var tracer = new CrossingTracer(House);
        var crossings = new List<Crossing>();

        tracer.Trace(At(3, 2, 1), At(3, 2, 3.7), crossings);

        Crossing crossing = crossings.Should().ContainSingle().Subject;
        crossing.Kind.Should().Be(LossKind.Floor);
        crossing.Cosine.Should().Be(1);
        crossing.Weight.Should().Be(1);
        tracer.NameOf(crossing).Should().Be("floor of first");
        tracer.Constructions[crossing.Construction].Should().Be(Joists);
    }

    [Fact]
    public void A_path_through_the_stairwell_meets_no_floor_and_one_over_its_edge_does()
    {
        Trace(House, At(1.5, 2, 1), At(1.5, 2, 3.7)).Should().BeEmpty();
        Trace(House, At(1, 2, 1), At(1, 2, 3.7)).Should().Equal("floor of first Floor 1");
        Trace(House, At(2, 3, 1), At(2, 3, 3.7)).Should().Equal("floor of first Floor 1");
    }

    [Fact]
    public void A_sloping_path_meets_the_floor_where_it_passes_the_mid_plane()
    {
        // From 2.05 m to 3.05 m: the mid-plane is passed exactly half-way, at x = 2 on the stairwell's edge; then just inside it.
        Trace(House, At(0, 2, 2.05), At(4, 2, 3.05)).Should().Equal("floor of first Floor 1");
        Trace(House, At(0, 2, 2.05), At(3.9998, 2, 3.05)).Should().BeEmpty();
    }

    [Fact]
    public void The_line_between_two_rooms_and_the_outer_edge_belong_to_the_floor()
    {
        Trace(House, At(4, 2, 1), At(4, 2, 3.7)).Should().Equal("floor of first Floor 1");
        Trace(House, At(8, 4, 1), At(8, 4, 3.7)).Should().Equal("floor of first Floor 1");
        Trace(House, At(8.0001, 2, 1), At(8.0001, 2, 3.7)).Should().BeEmpty();
    }

    [Fact]
    public void Over_a_room_with_nothing_above_the_floor_stands_for_the_roof()
    {
        Storey wing = Lower with { Rooms = [.. Lower.Rooms, new(new("wing"), Polygon.Rectangle(Point(8, 0), Point(12, 4)))] };

        Trace(Plan(wing, Upper), At(11, 2, 1), At(11, 2, 3.7)).Should().Equal("floor of first Floor 1");
        Trace(Plan(wing, Upper), At(12.0001, 2, 1), At(12.0001, 2, 3.7)).Should().BeEmpty();
    }

    [Fact]
    public void No_path_slips_in_between_the_walls_of_two_storeys()
    {
        FloorPlan house = Plan(Lower with { Walls = [Wall("below", Point(8, 0), Point(8, 4))] }, Upper with { Walls = [Wall("above", Point(8, 0), Point(8, 4))] });

        // From the yard upwards through the edge of the floor structure: below its middle the lower wall, above it the upper one.
        Trace(house, At(9, 2, 2.4), At(7, 2, 2.6)).Should().Contain("below Wall 1");
        Trace(house, At(9, 2, 2.5), At(7, 2, 2.8)).Should().Equal("above Wall 1");
    }

    [Fact]
    public void A_storey_without_rooms_has_its_floor_everywhere()
    {
        FloorPlan lines = Plan(Storey(), Upper with { Rooms = [] });

        Trace(lines, At(99, 2, 1), At(99, 2, 3.7)).Should().Equal("floor of first Floor 1");
    }

    [Fact]
    public void Paths_within_one_storey_meet_no_floor_and_walls_of_their_own_storey_alone()
    {
        FloorPlan house = Plan(Storey(Wall("below", Point(3, 0), Point(3, 4))), Upper with { Walls = [Wall("above", Point(3, 0), Point(3, 4))] });

        Trace(house, At(2.5, 2, 1), At(3.5, 2, 2)).Should().Equal("below Wall 1");
        Trace(house, At(2.5, 2, 3), At(3.5, 2, 4)).Should().Equal("above Wall 1");
        Trace(house, At(0, 3.5, 1), At(3.5, 3.5, 4)).Should().Equal("floor of first Floor 1", "above Wall 1");
    }

    [Fact]
    public void A_mid_plane_between_two_lattice_heights_is_still_exact()
    {
        // Thickness 0.3001 m puts the mid-plane at 2.54995 m, half a step below 2.55 m.
        FloorPlan house = Plan(Storey(), Upper with { Floor = Upper.Floor! with { ThicknessMetres = 0.3001 } });

        Trace(house, At(3, 2, 2.5499), At(3, 2, 2.55)).Should().Equal("floor of first Floor 1");
        Trace(house, At(3, 2, 2.55), At(3, 2, 3)).Should().BeEmpty();
    }
}
