using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields;
using static MeshSim.Tests.Propagation.PlanSketch;

namespace MeshSim.Tests.Propagation.Fields;

public sealed class FieldGridTests
{
    private static readonly FloorPlan Plan = PlanSketch.Plan(Wall("wall", Point(0.25, -0.3), Point(4.1, 2)));

    [Fact]
    public void Points_lie_on_whole_multiples_of_the_step_with_a_rim_of_one_step()
    {
        FieldGrid grid = FieldGrid.Over(Plan, new("ground"), 0.5, 1.2);

        grid.Origin.Should().Be(Point(-0.5, -1));
        (grid.Columns, grid.Rows).Should().Be((12, 8));
        grid.At(grid.Columns - 1, grid.Rows - 1).Should().Be(At(5, 2.5, 1.2));
        grid.Count.Should().Be(96);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    [InlineData(101)]
    public void A_step_outside_its_range_is_refused(double stepMetres) =>
        FluentActions.Invoking(() => FieldGrid.Over(Plan, new("ground"), stepMetres, 1)).Should().Throw<ArgumentOutOfRangeException>();

    [Fact]
    public void More_points_than_an_array_holds_are_not_counted_wrongly() =>
        FluentActions.Invoking(() => new FieldGrid(new("ground"), default(PlanPoint), 1, 100_000, 100_000, 0).Count).Should().Throw<OverflowException>();
}
