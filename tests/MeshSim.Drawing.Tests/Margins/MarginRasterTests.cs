using CsCheck;
using MeshSim.Drawing.Margins;
using MeshSim.Drawing.Palettes;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields;
using MeshSim.Studies;

namespace MeshSim.Drawing.Tests.Margins;

public sealed class MarginRasterTests
{
    /// <summary>Values below 100 in single precision, three operations.</summary>
    private const float SampleTolerance = 1e-4f;

    private static readonly FieldGrid Grid = new(new("ground"), new(0, 0), 1000, 4, 3, 10_000);

    [Fact]
    public void A_field_linear_in_both_directions_is_read_exactly() =>
        Gen.Select(Gen.Double[0, 3], Gen.Double[0, 2]).Sample((x, y) =>
        {
            Field field = new(Grid, [.. Enumerable.Range(0, 12).Select(i => (5f * (i % 4)) - (3f * (i / 4)))]);

            MarginRaster.Sample(field, x, y).Should().BeApproximately((float)((5 * x) - (3 * y)), SampleTolerance);
        });

    [Theory]
    [InlineData(-0.01, 1)]
    [InlineData(1, -0.01)]
    [InlineData(3.01, 1)]
    [InlineData(1, 2.01)]
    public void Outside_the_grid_there_is_no_value(double x, double y) =>
        MarginRaster.Sample(new(Grid, new float[12]), x, y).Should().Be(float.NaN);

    [Fact]
    public void Beside_a_missing_value_the_nearest_point_decides()
    {
        float[] values = [.. Enumerable.Repeat(7f, 12)];
        values[5] = float.NaN;

        MarginRaster.Sample(new(Grid, values), 0.4, 1).Should().Be(7);
        MarginRaster.Sample(new(Grid, values), 0.6, 1).Should().Be(float.NaN);
    }

    [Fact]
    public void Pixels_have_the_class_of_the_field_inside_rooms_and_none_outside()
    {
        MarginMap map = SyntheticCoverage.Map(TwoStoreyFlat.Upper);
        Storey storey = TwoStoreyFlat.Home.FloorPlan.Storey(TwoStoreyFlat.Upper);
        var scale = new MarginScale(map.DesignMargin);
        SheetLayout layout = SheetLayout.Of(PlanBounds.Of(TwoStoreyFlat.Home, storey), PictureSize.OfScale(40), 500);
        var raster = new MarginRaster(map.Margin, storey, scale, layout);

        for (int row = 0; row < raster.Height; row += 7)
        {
            for (int column = 0; column < raster.Width; column += 7)
            {
                PlanPoint at = layout.Projection.ToPlan(new(raster.Left + column + 0.5f, raster.Top + row + 0.5f));
                bool isInside = storey.RoomAt(at) is not null;
                double x = (at.X - map.Margin.Grid.Origin.X) / (double)map.Margin.Grid.Step, y = (at.Y - map.Margin.Grid.Origin.Y) / (double)map.Margin.Grid.Step;
                float margin = isInside ? MarginRaster.Sample(map.Margin, x, y) : float.NaN;

                if (!isInside) raster[column, row].Should().Be(MarginRaster.Outside);
                else if (!scale.Edges.Any(edge => Math.Abs(edge - margin) < 0.01)) raster[column, row].Should().Be((byte)scale.ClassOf(margin));
            }
        }
    }
}
