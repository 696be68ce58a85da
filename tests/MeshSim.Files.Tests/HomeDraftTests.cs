using MeshSim.Files.Tests.Fixtures;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Tests;

/// <summary>What a home with mistakes hands over to be looked at.</summary>
public sealed class HomeDraftTests
{
    private const string Home = """
        home: Slips
        region: EU
        storeys:
          - storey: ground
            ceiling: 2.4
            outer: cavity-brick
            inner: stud-partition
            rooms:
              hall: { from: [0, 0], to: [2, 6] }
              den: { from: [2, 0], to: [6, 3] }
              attic stair: { corners: [[2, 3], [6, 3], [6, 6], [4, 2]] }
            walls:
              - { of: den, facing: east, is: brick-half }
            openings:
              - { door: wide door, between: [hall, den], at: 1, width: 4, height: 2, is: door-timber }
              - { window: tall window, of: den, facing: south, at: 1, width: 1, sill: 1, height: 3, is: glazing-double }
            objects:
              - { object: safe, from: [5, 1], to: [5.5, 1.5], height: 1, is: metal-cabinet }
        networks:
          - { network: mesh, radio: ieee802154-2450, channel: 20, coordinator: hob }
        """;

    private const string Devices = """
        id,network,power,storey,x,y,height
        hub,mesh,usb,ground,1,1,1
        lamp,mesh,mains,ground,3,1,9
        lost,mesh,mains,ground,30,1,1
        vague,mesh,mains,ground,three,1,1
        """;

    [Fact]
    public void Every_problem_with_a_place_on_the_plan_lies_there()
    {
        using TemporaryFolder folder = new();
        HomeReadResult result = Read(folder);

        result.Home.Should().BeNull();
        result.Draft!.Diagnostics.Select(one => (one.Diagnostic.Message.Split('"').ElementAtOrDefault(1), one.Point)).Should().Equal(
            ("attic stair", At(4, 4)), // Its outline meets itself: the middle of what was written.
            ("wide door", At(2, 3)),
            ("tall window", At(3.5, 0)),
            ("mesh", null), // The coordinator that is not there is nowhere.
            ("ground", At(3, 1)), // Its ceiling is lower than the lamp.
            ("three", null)); // x is no number.
    }

    [Fact]
    public void What_could_be_read_is_there_and_what_could_not_be_built_is_kept_apart()
    {
        using TemporaryFolder folder = new();
        HomeDraft draft = Read(folder).Draft!;

        draft.Home.Name.Should().Be("Slips");
        draft.Home.FloorPlan.Storeys.Single().Rooms.Select(room => room.Name.Value).Should().Equal("hall", "den");
        draft.Unbuilt.Select(room => room.Name.Value).Should().Equal("attic stair");
        draft.Home.Devices.Select(device => device.Id.Value).Should().Contain("hub");
    }

    [Fact]
    public void A_home_in_order_has_a_draft_with_all_of_it()
    {
        using TemporaryFolder folder = new TemporaryFolder().WithSample();
        HomeReadResult result = folder.Read();

        result.Draft!.Home.FloorPlan.Should().BeEquivalentTo(result.Home!.FloorPlan);
        result.Draft.Home.Devices.Should().Equal(result.Home.Devices);
        result.Draft.Unbuilt.Should().BeEmpty();
        result.Draft.Diagnostics.Should().BeEmpty();
    }

    [Fact]
    public void Nothing_gives_no_draft()
    {
        using TemporaryFolder folder = new();

        folder.Read().Draft.Should().BeNull();
    }

    private static HomeReadResult Read(TemporaryFolder folder)
    {
        File.WriteAllText(folder.File("home.yaml"), Home);
        File.WriteAllText(folder.File("devices.csv"), Devices);
        return folder.Read();
    }

    private static PlanPoint? At(double x, double y) => PlanPoint.FromMetres(x, y);
}
