using MeshSim.Drawing.Plans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Tests.Plans;

public sealed class PlanLabelsTests
{
    [Fact]
    public void A_rectangle_has_its_sides() =>
        PlanLabels.MeasuresOf(Polygon.Rectangle(PlanPoint.FromMetres(1, 1), PlanPoint.FromMetres(5.2, 4.6))).Should().Be("4.20 × 3.60 m");

    [Fact]
    public void Any_other_room_has_its_floor_too() =>
        PlanLabels.MeasuresOf(new([PlanPoint.FromMetres(0, 0), PlanPoint.FromMetres(4, 0), PlanPoint.FromMetres(0, 3)])).Should().Be("4.00 × 3.00 m, 6.0 m²");
}
