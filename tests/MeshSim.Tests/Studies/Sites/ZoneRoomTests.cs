using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields;
using MeshSim.Studies.Sites;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Studies.Sites;

public sealed class ZoneRoomTests
{
    private static readonly FloorPlan Plan = Files.HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", "quay-terrace")).Home!.FloorPlan;

    [Fact]
    public void No_point_hangs_over_the_stairs()
    {
        Storey loft = Plan.Storeys.Single(storey => storey.Name.Value == "loft");
        Polygon hole = loft.Floor!.Stairwells.Should().ContainSingle().Subject.Outline;
        FieldGrid grid = FieldGrid.Over(Plan, loft.Name, stepMetres: 0.25, heightMetres: 0.3);
        int[] taken = [.. ZoneRoom.Of(loft, grid).SelectMany(room => room.Points)];
        taken.Should().OnlyHaveUniqueItems();
        int[] inRooms = [.. Enumerable.Range(0, grid.Count).Where(point => loft.Rooms.Any(room => room.Outline.Contains(At(point))))];
        int[] overStairs = [.. inRooms.Where(point => hole.Locate(PathPoint.At(At(point))) == Location.Inside)];
        overStairs.Should().NotBeEmpty();
        taken.Should().BeEquivalentTo(inRooms.Except(overStairs));

        PlanPoint At(int point) => grid.At(point % grid.Columns, point / grid.Columns).Plan;
    }
}
