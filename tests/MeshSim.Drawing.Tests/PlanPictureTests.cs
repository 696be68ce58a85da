using System.Text;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Tests;

public sealed class PlanPictureTests
{
    [Fact]
    public void The_sheet_names_every_storey_room_wall_and_remark()
    {
        string svg = Encoding.UTF8.GetString(PlanPicture.Draw(Draft, PictureFormat.Svg)!);

        foreach (var storey in TwoStoreyFlat.Home.FloorPlan.Storeys)
        {
            svg.Should().Contain(storey.Name.Value + ", ceiling");
            foreach (var room in storey.Rooms) svg.Should().Contain(room.Name.Value);
            foreach (var wall in storey.Walls) svg.Should().Contain(wall.Construction.Value);
        }

        svg.Should().Contain("1 problem, and what could not be read is not drawn; 1 notice").And.Contain("home.yaml(3,1)").And.Contain("lean-to");
    }

    [Fact]
    public void The_same_draft_gives_the_same_bytes() =>
        PlanPicture.Draw(Draft, PictureFormat.Png).Should().Equal(PlanPicture.Draw(Draft, PictureFormat.Png));

    [Fact]
    public void A_home_without_storeys_is_no_picture() =>
        PlanPicture.Draw(new(TwoStoreyFlat.Home with { FloorPlan = new([]), Devices = [], Outlets = [] }, [], []), PictureFormat.Png).Should().BeNull();

    internal static PlanDraft Draft { get; } = new(
        TwoStoreyFlat.Home,
        [
            new("home.yaml(3,1): \"lean-to\" meets itself", true, TwoStoreyFlat.Ground, TwoStoreyFlat.At(1, 1)),
            new("devices.csv(2,9): the point lies on a wall", false, TwoStoreyFlat.Ground, TwoStoreyFlat.At(1, 1)),
        ],
        [new(TwoStoreyFlat.Ground, "lean-to", [TwoStoreyFlat.At(-2, 0), TwoStoreyFlat.At(0, 0), PlanPoint.FromMetres(-2, 2), PlanPoint.FromMetres(0, 2)])]);
}
