using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;
using static MeshSim.Tests.FloorPlans.Descriptions.StoreySketch;

namespace MeshSim.Tests.FloorPlans.Descriptions;

public sealed partial class StoreyBuilderTests
{
    [Fact]
    public void Two_rooms_side_by_side_share_one_inner_wall_and_have_outer_walls_around()
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(Room("hall", 0, 0, 2, 3), Room("kitchen", 2, 0, 5, 3)));

        built.Problems.Should().BeEmpty();
        built.Notices.Should().BeEmpty();
        Walls(built).Should().Equal(
            "hall, south: (0, 0) to (2, 0), outer",
            "hall | kitchen: (2, 0) to (2, 3), inner",
            "hall, north: (0, 3) to (2, 3), outer",
            "hall, west: (0, 0) to (0, 3), outer",
            "kitchen, south: (2, 0) to (5, 0), outer",
            "kitchen, east: (5, 0) to (5, 3), outer",
            "kitchen, north: (2, 3) to (5, 3), outer");
        built.Storey.Walls[1].Rooms.Should().Equal(new RoomName("hall"), new RoomName("kitchen"));
        built.Storey.Walls[0].Rooms.Should().Equal(new RoomName("hall"));
    }

    [Fact]
    public void The_shared_stretch_of_unequal_rooms_is_split_off()
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(Room("hall", 0, 0, 2, 6), Room("kitchen", 2, 1, 5, 4)));

        Walls(built).Where(wall => wall.Contains("(2, ", StringComparison.Ordinal) && wall.StartsWith("hall", StringComparison.Ordinal)).Should().Equal(
            "hall, south: (0, 0) to (2, 0), outer",
            "hall, east: (2, 0) to (2, 1), outer",
            "hall | kitchen: (2, 1) to (2, 4), inner",
            "hall, east: (2, 4) to (2, 6), outer",
            "hall, north: (0, 6) to (2, 6), outer");
    }

    [Fact]
    public void A_wall_is_cut_at_the_joint_where_another_meets_it()
    {
        Storey storey = Sound(Storey(Room("long", 0, 0, 4, 2), Room("left", 0, 2, 1.5, 4), Room("right", 1.5, 2, 4, 4)));

        storey.Walls.Where(wall => wall.Name.StartsWith("long |", StringComparison.Ordinal)).Select(wall => (wall.Name, wall.Start, wall.End)).Should().Equal(
            ("long | right", Point(1.5, 2), Point(4, 2)), ("long | left", Point(0, 2), Point(1.5, 2)));
    }

    [Fact]
    public void An_L_shaped_room_has_a_wall_on_each_of_its_six_edges()
    {
        RoomDescription corner = Room("lounge", (0, 0), (4, 0), (4, 2), (2, 2), (2, 4), (0, 4));
        StoreyBuilt built = StoreyBuilder.Build(Storey(corner, Room("study", 2, 2, 4, 4)));

        built.Storey.Walls.Count(wall => wall.Name == "lounge | study").Should().Be(2);
        Walls(built).Should().Contain("lounge | study: (2, 2) to (4, 2), inner").And.Contain("lounge | study: (2, 2) to (2, 4), inner");
        built.Storey.Walls.Should().HaveCount(8);
        built.Storey.Rooms[0].Outline.AreaSquareMetres.Should().Be(12);
    }

    [Fact]
    public void A_corner_in_the_middle_of_a_straight_edge_makes_no_joint()
    {
        Storey storey = Sound(Storey(Room("hall", (0, 0), (1, 0), (2, 0), (2, 3), (0, 3))));

        storey.Walls.Should().HaveCount(4);
        storey.Rooms[0].Outline.Corners.Should().HaveCount(4);
    }

    [Fact]
    public void Clockwise_corners_give_the_same_walls()
    {
        Storey storey = Sound(Storey(Room("hall", (0, 0), (0, 3), (2, 3), (2, 0)), Room("kitchen", 2, 0, 5, 3)));

        storey.Walls.Should().HaveCount(7);
        storey.Walls.Should().ContainSingle(wall => wall.Name == "hall | kitchen");
    }

    [Fact]
    public void North_turns_the_names_of_the_sides()
    {
        // North to the right of the page: what is right on the page faces north.
        Storey storey = Sound(Storey(Room("hall", 0, 0, 2, 3)) with { NorthDegrees = 90 });

        storey.Walls.Single(wall => wall.Start == Point(2, 0) && wall.End == Point(2, 3)).Name.Should().Be("hall, north");
        storey.Walls.Single(wall => wall.Start == Point(0, 0) && wall.End == Point(2, 0)).Name.Should().Be("hall, east");
    }

    [Fact]
    public void Exceptions_by_room_pair_by_side_and_by_line_override_the_default_the_later_the_stronger()
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(Room("hall", 0, 0, 2, 3), Room("kitchen", 2, 0, 5, 3)) with
        {
            Walls =
            [
                new(default, Between("kitchen", "hall"), new("brick")),
                new(default, SideOf("kitchen", CompassSide.North), new("stone"), "old wall"),
                new(default, new WallPlace.Line(Point(3, 3), Point(4, 3)), new("glass-brick"), "light"),
                new(default, new WallPlace.Line(Point(3, 1), Point(4, 1)), new("steel"), "screen"),
                new(default, new WallPlace.Named("old wall"), new("granite")),
            ],
        });

        built.Problems.Should().BeEmpty();
        Walls(built).Should().Contain("hall | kitchen: (2, 0) to (2, 3), brick")
            .And.Contain("old wall: (2, 3) to (3, 3), granite")
            .And.Contain("light: (3, 3) to (4, 3), glass-brick")
            .And.Contain("old wall: (4, 3) to (5, 3), granite")
            .And.Contain("screen: (3, 1) to (4, 1), steel");
        built.Storey.Walls.Should().HaveCount(10);
    }

    [Fact]
    public void A_storey_of_lines_alone_is_cut_at_its_joints_and_takes_openings_by_name()
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey() with
        {
            Outer = null,
            Inner = null,
            Walls =
            [
                new(default, new WallPlace.Line(Point(0, 0), Point(6, 0)), Stone, "front"),
                new(default, new WallPlace.Line(Point(2, 3), Point(2, 0)), Stone, "cross wall"),
                new(default, new WallPlace.Line(Point(0, 3), Point(6, 3)), Stone),
            ],
            Openings = [Door("front door", new WallPlace.Named("front"), 3, 1)],
        });

        built.Problems.Should().BeEmpty();
        Walls(built).Should().Equal(
            "front: (0, 0) to (2, 0), stone",
            "front: (2, 0) to (6, 0), stone",
            "cross wall: (2, 0) to (2, 3), stone",
            "wall (0, 3) to (2, 3): (0, 3) to (2, 3), stone",
            "wall (2, 3) to (6, 3): (2, 3) to (6, 3), stone");
        Opening door = built.Storey.Walls[1].Openings.Should().ContainSingle().Subject;
        door.OffsetMetres.Should().Be(1);
    }

    [Fact]
    public void A_slanting_wall_is_shared_end_by_end_though_no_lattice_point_lies_on_it()
    {
        // The middle of the slanting edge is not on the lattice; the neighbours' corners are put on it to the nearest step.
        StoreyBuilt built = StoreyBuilder.Build(Storey(
            Room("hall", (0, 0), (3, 1), (3, 4), (0, 4)),
            Room("porch", (0, 0), (0, -2), (1.1111, -2), (1.1111, 0.3704)),
            Room("store", (1.1111, 0.3704), (1.1111, -2), (3, -2), (3, 1))));

        built.Problems.Should().BeEmpty();
        built.Notices.Should().BeEmpty();
        built.Storey.Walls.Should().ContainSingle(wall => wall.Name == "hall | porch").Which.End.Should().Be(Point(1.1111, 0.3704));
        built.Storey.Walls.Should().ContainSingle(wall => wall.Name == "hall | store").Which.Start.Should().Be(Point(1.1111, 0.3704));
    }
}
