using System.Collections.Immutable;
using MeshSim.Drawing.Margins;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields;

namespace MeshSim.Drawing.Tests.Margins;

public sealed class ContourTracerTests
{
    /// <summary>A chord of a circle of radius 2 m across a cell of 0.1 m leaves it by at most 0.1² / (8 · 2) m.</summary>
    private const double ChordToleranceMetres = 0.01 / 16;

    [Fact]
    public void A_cone_has_one_closed_circle_at_each_level()
    {
        Field field = FieldOf(61, 61, (x, y) => 10 - Math.Sqrt(((x - 3) * (x - 3)) + ((y - 3) * (y - 3))));

        ImmutableArray<Contour> lines = ContourTracer.Trace(field, 8);

        lines.Should().ContainSingle().Which.IsClosed.Should().BeTrue();
        foreach (PlanPoint point in lines[0].Points)
            point.DistanceMetresTo(PlanPoint.FromMetres(3, 3)).Should().BeApproximately(2, ChordToleranceMetres * 2);
    }

    [Fact]
    public void A_slope_has_one_open_straight_line_from_edge_to_edge()
    {
        Field field = FieldOf(11, 21, (x, _) => 100 * x);

        Contour line = ContourTracer.Trace(field, 33).Should().ContainSingle().Subject;

        line.IsClosed.Should().BeFalse();
        line.Points.Should().HaveCount(21).And.OnlyContain(point => point.X == 3300);
    }

    [Fact]
    public void Higher_values_lie_on_the_right()
    {
        Contour line = ContourTracer.Trace(FieldOf(11, 11, (x, _) => 100 * x), 45)[0];

        Predicates.SideOf(line.Points[0], line.Points[1], PlanPoint.FromMetres(1, 0.5)).Should().Be(Side.Right);
    }

    [Fact]
    public void A_saddle_is_parted_by_the_mean_of_its_corners()
    {
        // Corners 3, 0 below and 0, 3 above: the mean of 1.5 joins the high corners at level 1 and the low ones at level 2.
        Field field = new(GridOf(2, 2), [3, 0, 0, 3]);

        ContourTracer.Trace(field, 1).Should().HaveCount(2);
        ContourTracer.Trace(field, 2).Should().HaveCount(2);
        ContourTracer.Trace(field, 1)[0].Points.Should().NotIntersectWith(ContourTracer.Trace(field, 2)[0].Points);
    }

    [Fact]
    public void Cells_with_a_missing_value_have_no_line()
    {
        Field field = FieldOf(11, 11, (x, y) => y > 0.45 ? double.NaN : 100 * x);

        ContourTracer.Trace(field, 33).Should().ContainSingle().Which.Points.Should().OnlyContain(point => point.YMetres < 0.45);
    }

    [Fact]
    public void A_level_that_the_field_never_has_gives_no_line() =>
        ContourTracer.Trace(FieldOf(5, 5, (_, _) => 7), 8).Should().BeEmpty();

    [Fact]
    public void A_value_exactly_on_the_level_counts_as_above() =>
        ContourTracer.Trace(FieldOf(5, 5, (_, _) => 8), 8).Should().BeEmpty();

    private static Field FieldOf(int columns, int rows, Func<double, double, double> value)
    {
        FieldGrid grid = GridOf(columns, rows);
        return new(grid, [.. Enumerable.Range(0, grid.Count).Select(i => (float)value(i % columns * 0.1, i / columns * 0.1))]);
    }

    private static FieldGrid GridOf(int columns, int rows) => new(new StoreyName("ground"), new(0, 0), 1000, columns, rows, 10_000);
}
