using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Plans;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing.Tests.Plans;

public sealed class PlanStoreyTests
{
    [Fact]
    public void Labels_and_marks_overlap_neither_each_other_nor_the_frame()
    {
        foreach (PlanStorey plan in Storeys())
        {
            PixelBox[] boxes = [.. plan.Labels.Select(label => label.Box), .. plan.Devices.Select(mark => mark.Box), .. plan.Remarks.Select(mark => mark.Box)];

            for (int i = 0; i < boxes.Length; i++)
            {
                plan.Map.Holds(boxes[i]).Should().BeTrue();
                for (int j = i + 1; j < boxes.Length; j++) boxes[i].Overlaps(boxes[j]).Should().BeFalse();
            }
        }
    }

    [Fact]
    public void Every_room_and_every_device_has_its_label()
    {
        foreach (PlanStorey plan in Storeys())
        {
            plan.Labels.Where(label => label.Request.Kind == LabelKind.Room).Select(label => label.Request.Key).Should().Contain(plan.Storey.Rooms.Select(room => room.Name.Value));
            plan.Labels.Where(label => label.Request.Kind == LabelKind.Device).Should().HaveCount(plan.Devices.Length);
        }
    }

    [Fact]
    public void Two_remarks_at_one_place_stand_beside_each_other()
    {
        RemarkMark[] remarks = [.. Storeys().Single(plan => plan.Storey.Name == Scenes.TwoStoreyFlat.Ground).Remarks];

        remarks.Select(mark => mark.Number).Should().Equal(1, 2);
        remarks.Select(mark => mark.IsMoved).Should().Equal(false, true);
    }

    private static List<PlanStorey> Storeys()
    {
        using var ink = new Ink();
        PlanDraft draft = PlanPictureTests.Draft;
        Storey[] storeys = [.. draft.Home.FloorPlan.Storeys.Reverse()];
        var column = PlanColumn.Of(draft, storeys, ink);
        PlanLayout layout = PlanLayout.Of([.. storeys.Select(storey => PlanStorey.BoundsOf(storey, draft))], column.HeightPixels);
        return [.. storeys.Select((storey, i) => PlanStorey.Of(storey, draft, column, layout.Maps[i], layout.Projections[i], ink))];
    }
}
