using System.Collections.Immutable;
using CsCheck;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Tests.FloorPlans.Descriptions;
using static MeshSim.Tests.FloorPlans.Descriptions.StoreySketch;

namespace MeshSim.Tests.Devices;

public sealed class AssumedOutletsTests
{
    // A place is rounded to the lattice in both coordinates.
    private const double RoundingMetres = 1e-4;

    private static readonly StoreyDescription Flat = Storey(Room("hall", 0, 0, 2, 3), Room("living room", 2, 0, 6, 3));

    [Fact]
    public void Walls_are_divided_evenly_and_outlets_sit_in_the_middle_of_each_section()
    {
        Outlet[] outlets = [.. Along(Flat).Where(outlet => outlet.Room == new RoomName("hall"))];

        outlets.Select(outlet => (outlet.Id.Value, outlet.Point)).Should().Equal(
            ("hall-1", Point(1, 0.05)),
            ("hall-2", Point(1.95, 0.75)),
            ("hall-3", Point(1.95, 2.25)),
            ("hall-4", Point(1, 2.95)),
            ("hall-5", Point(0.05, 2.25)),
            ("hall-6", Point(0.05, 0.75)));
        outlets.Should().OnlyContain(outlet => outlet.IsAssumed && outlet.HeightMetres == AssumedOutlets.HeightMetres && outlet.Storey == new StoreyName("ground"));
    }

    [Fact]
    public void Names_of_several_words_are_joined() => Along(Flat).Select(outlet => outlet.Id.Value).Should().Contain("living-room-1");

    [Fact]
    public void An_outlet_gives_way_to_a_door_on_both_sides_of_the_wall_but_not_to_a_window_above_it()
    {
        StoreyDescription doored = Flat with
        {
            Openings =
            [
                Door("door", Between("hall", "living room"), 0.4, 0.8),
                Door("window", SideOf("hall", CompassSide.South), 0.5, 1) with { Kind = OpeningKind.Window, SillMetres = 0.9, HeightMetres = 1 },
            ],
        };
        Outlet[] outlets = [.. Along(doored)];

        // 0.75 m lies in the door; 1.25 m too near its jamb at 1.2 m; 0.25 m exactly at the clearance.
        outlets.Single(outlet => outlet.Id.Value == "hall-2").Point.Should().Be(Point(1.95, 0.25));
        outlets.Single(outlet => outlet.Id.Value == "hall-1").Point.Should().Be(Point(1, 0.05));
        outlets.Where(outlet => Math.Abs(outlet.Point.XMetres - 2) < 0.1).Select(outlet => outlet.Point.YMetres).Should().Equal(0.25, 2.25, 2.25, 0.25);
    }

    [Fact]
    public void Narrow_rooms_and_short_walls_get_none()
    {
        Along(Storey(Room("cupboard", 0, 0, 0.9, 3))).Should().BeEmpty();
        Along(Storey(Room("hall", 0, 0, 4, 4)) with { Walls = [new(default, new WallPlace.Line(Point(0, 2), Point(0.5, 2)), Stone)] }).Should().HaveCount(8);
    }

    [Fact]
    public void An_outlet_is_never_behind_a_thing_or_in_a_stairwell()
    {
        Storey storey = Sound(Flat) with
        {
            Objects = [new() { Name = "fridge", Footprint = Polygon.Rectangle(Point(0.6, 0), Point(1.4, 0.7)), HeightMetres = 1.8, Construction = new("metal") }],
            Floor = new(new("joists"), 0.3, [new(Polygon.Rectangle(Point(3, 0), Point(6, 1)))]),
        };

        foreach (Outlet outlet in AssumedOutlets.Along(new([storey])))
        {
            storey.Objects[0].Footprint.Contains(outlet.Point).Should().BeFalse();
            storey.Floor.Stairwells[0].Outline.Contains(outlet.Point).Should().BeFalse();
        }
    }

    [Fact]
    public void On_random_plans_every_outlet_is_in_its_room_beside_a_wall_with_an_id_of_its_own() => RandomPartitions.Any.Sample(description =>
    {
        Storey storey = Sound(description);
        Outlet[] outlets = [.. AssumedOutlets.Along(new([storey]))];

        outlets.Select(outlet => outlet.Id).Should().OnlyHaveUniqueItems();
        outlets.Select(outlet => outlet.Room!.Value).Distinct().Should().BeEquivalentTo(storey.Rooms.Select(room => room.Name));
        foreach (Outlet outlet in outlets)
        {
            storey.RoomAt(outlet.Point)!.Name.Should().Be(outlet.Room!.Value);
            storey.DistanceMetresToNearestWall(outlet.Point).Should().BeApproximately(AssumedOutlets.OffWallMetres, RoundingMetres);
        }
    });

    private static ImmutableArray<Outlet> Along(StoreyDescription description) => AssumedOutlets.Along(new([Sound(description)]));
}
