using MeshSim.FloorPlans.Descriptions;
using MeshSim.Tests.Architecture;
using static MeshSim.Tests.FloorPlans.Descriptions.StoreySketch;

namespace MeshSim.Tests.FloorPlans.Descriptions;

public sealed class FacingRoomsTests
{
    [Fact]
    public void Rooms_drawn_by_their_clear_measures_are_noted_at_the_later_one()
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(Room("hall", 0, 0, 2, 3, source: 1), Room("kitchen", 2.12, 0.5, 5, 4, source: 2)));

        built.Problems.Should().BeEmpty();
        built.Notices.Should().Equal(new FloorPlanNotice(
            new(2),
            "rooms \"hall\" and \"kitchen\" face each other 0.12 m apart over 2.5 m; rooms are drawn along the centre lines of walls, "
            + "so these count as two outer walls: let the rooms share an edge where one wall stands"));
    }

    [Fact]
    public void A_pair_of_rooms_is_noted_once_however_many_pieces_of_wall_face_each_other()
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(
            Room("hall", 0, 0, 2, 3), Room("kitchen", (2.12, 0), (5, 0), (5, 3), (2.12, 3), (2.12, 2), (2.25, 2), (2.25, 1), (2.12, 1))));

        built.Notices.Should().ContainSingle().Which.Text.Should().StartWith("rooms \"hall\" and \"kitchen\" face each other 0.12 m apart over 3 m;");
    }

    [Theory]
    [InlineData(0.06, true)]
    [InlineData(0.3, true)]
    [InlineData(0.3002, false)]
    [InlineData(0.8, false)]
    public void Only_a_gap_that_a_wall_could_fill_is_noted(double gapMetres, bool isNoted)
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(Room("hall", 0, 0, 2, 3), Room("kitchen", 2 + gapMetres, 0, 5, 3)));

        built.Notices.Should().HaveCount(isNoted ? 1 : 0);
    }

    [Fact]
    public void The_page_about_the_home_folder_states_what_is_moved_and_what_is_noted()
    {
        string page = File.ReadAllText(Path.Combine(SourceTree.Root, "docs", "home-folder.md"));

        page.Should().Contain(FormattableString.Invariant($"within {LineSnapping.ToleranceMetres * 100} cm of each other"));
        page.Should().Contain(FormattableString.Invariant($"up to {FacingRooms.WidestGapMetres * 100} cm"));
    }

    [Fact]
    public void Slanting_walls_that_face_each_other_are_noted()
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(Room("hall", (0, 0), (3, 0), (0, 3)), Room("kitchen", (3.2, 0), (3.2, 3), (0.2, 3))));

        built.Notices.Should().ContainSingle().Which.Text.Should().Contain("face each other 0.1414 m apart");
    }

    [Fact]
    public void Rooms_that_meet_at_their_corners_alone_are_not_noted()
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(Room("hall", 0, 0, 2, 3), Room("kitchen", 2.2, 2.9, 5, 6)));

        built.Notices.Should().BeEmpty();
    }

    [Fact]
    public void A_narrow_room_between_two_others_is_no_gap()
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(Room("hall", 0, 0, 2, 3), Room("duct", 2, 0, 2.2, 3), Room("kitchen", 2.2, 0, 5, 3)));

        built.Notices.Should().BeEmpty();
    }

    [Fact]
    public void The_two_arms_of_one_room_are_not_noted()
    {
        StoreyBuilt built = StoreyBuilder.Build(Storey(
            Room("hall", (0, 0), (5, 0), (5, 3), (2.2, 3), (2.2, 1), (2, 1), (2, 3), (0, 3))));

        built.Notices.Should().BeEmpty();
    }
}
