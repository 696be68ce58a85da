using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Tests.Sheets;

public sealed class SheetLayoutTests
{
    private const float ColumnHeight = 700;

    [Theory]
    [InlineData(9, 6.4)]
    [InlineData(5, 12)]
    [InlineData(40, 8)]
    [InlineData(2, 2)]
    public void Parts_lie_on_the_sheet_without_overlap_at_any_shape_of_plan(double widthMetres, double heightMetres)
    {
        SheetLayout layout = SheetLayout.Of(BoundsOf(widthMetres, heightMetres), PictureSize.Default, ColumnHeight);

        PixelBox[] parts = [layout.Title, layout.Map, layout.Strip, layout.Column, layout.Footer];
        parts.Should().OnlyContain(part => layout.Sheet.Holds(part));
        for (int i = 0; i < parts.Length; i++)
            for (int j = 0; j < i; j++)
                parts[i].Overlaps(parts[j]).Should().BeFalse("parts {0} and {1} are apart", i, j);
        layout.Column.Height.Should().BeGreaterThanOrEqualTo(ColumnHeight);
    }

    [Theory]
    [InlineData(1600)]
    [InlineData(2400)]
    public void A_wide_plan_fills_the_width(int widthPixels) =>
        SheetLayout.Of(BoundsOf(20, 8), PictureSize.OfWidth(widthPixels), ColumnHeight).Sheet.Width.Should().Be(widthPixels);

    [Fact]
    public void A_tall_plan_is_not_taller_than_the_sheet_may_be_wide() =>
        SheetLayout.Of(BoundsOf(5, 12), PictureSize.Default, ColumnHeight).Sheet.Height.Should().BeLessThanOrEqualTo(1600);

    [Fact]
    public void A_long_narrow_plan_keeps_a_legible_scale() =>
        SheetLayout.Of(BoundsOf(5, 30), PictureSize.Default, ColumnHeight).Projection.PixelsPerMetre.Should().Be(80);

    [Theory]
    [InlineData(5, 300)]
    [InlineData(900, 900)]
    public void A_plan_of_any_size_fits_a_sheet_that_viewers_open(double widthMetres, double heightMetres)
    {
        PixelBox sheet = SheetLayout.Of(BoundsOf(widthMetres, heightMetres), PictureSize.Default, ColumnHeight).Sheet;

        sheet.Width.Should().BeLessThanOrEqualTo(SheetLayout.LongestSide);
        sheet.Height.Should().BeLessThanOrEqualTo(SheetLayout.LongestSide);
    }

    [Fact]
    public void The_plan_lies_inside_the_map()
    {
        PlanBounds bounds = PlanBounds.Of(TwoStoreyFlat.Home, TwoStoreyFlat.Home.FloorPlan.Storey(TwoStoreyFlat.Ground));
        SheetLayout layout = SheetLayout.Of(bounds, PictureSize.OfScale(70), ColumnHeight);

        Pixel low = layout.Projection.ToPixel(bounds.Low), high = layout.Projection.ToPixel(bounds.High);
        layout.Map.Holds(new(low.X, high.Y, high.X, low.Y)).Should().BeTrue();
        (high.X - low.X).Should().BeApproximately((float)(9 * 70), 0.01f, "places on the sheet are single-precision");
    }

    [Fact]
    public void A_sheet_that_no_viewer_opens_is_refused()
    {
        Action layOut = () => SheetLayout.Of(BoundsOf(200, 100), PictureSize.OfScale(1000), ColumnHeight);

        layOut.Should().Throw<ArgumentException>().WithMessage("*at most 16384*");
    }

    private static PlanBounds BoundsOf(double widthMetres, double heightMetres) =>
        new(PlanPoint.FromMetres(-1, -2), PlanPoint.FromMetres(widthMetres - 1, heightMetres - 2));
}
