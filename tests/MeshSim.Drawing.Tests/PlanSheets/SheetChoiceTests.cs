using MeshSim.Drawing.PlanSheets;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Tests.PlanSheets;

public sealed class SheetChoiceTests
{
    private const float KeyHeight = 300;

    [Theory]
    [InlineData(3, 4, 50, PaperFormat.A4)]
    [InlineData(10, 8, 50, PaperFormat.A3)]
    [InlineData(20, 20, 100, PaperFormat.A3)]
    [InlineData(5, 6, 50, PaperFormat.A4)]
    public void The_largest_scale_wins_and_then_the_smallest_paper(double widthMetres, double heightMetres, int scale, PaperFormat paper)
    {
        SheetChoice choice = For(new(), widthMetres, heightMetres);

        (choice.Scale, choice.Tiles).Should().Be((scale, 1L));
        choice.Layout.Paper.Format.Should().Be(paper);
    }

    [Fact]
    public void What_is_prescribed_is_kept()
    {
        For(new() { Scale = 100 }, 3, 4).Scale.Should().Be(100);
        For(new() { Paper = PaperFormat.A3 }, 3, 4).Layout.Paper.Format.Should().Be(PaperFormat.A3);
        SheetChoice both = For(new() { Scale = 50, Paper = PaperFormat.A4 }, 20, 20);
        (both.Scale, both.Layout.Paper.Format).Should().Be((50, PaperFormat.A4));
        both.Tiles.Should().BeGreaterThan(1);
    }

    [Fact]
    public void A_plan_on_one_sheet_lies_in_the_middle_of_its_frame_and_within_it()
    {
        for (double width = 1; width < 40; width += 2.7)
        {
            for (double height = 1; height < 40; height += 3.1)
            {
                SheetChoice choice = For(new(), width, height);
                if (choice.Tiles > 1) continue;
                Projection projection = choice.ProjectionOf(Bounds(width, height), 0, 0);
                Pixel low = projection.ToPixel(PlanPoint.FromMetres(0, 0)), high = projection.ToPixel(PlanPoint.FromMetres(width, height));
                choice.Layout.Plan.Grown(0.1f).Holds(new(low.X, high.Y, high.X, low.Y)).Should().BeTrue();
                ((low.X + high.X) / 2).Should().BeApproximately(choice.Layout.Plan.Centre.X, 0.1f, "single precision on a sheet of two thousand pixels");
            }
        }
    }

    [Fact]
    public void Sheets_side_by_side_leave_no_gap()
    {
        SheetChoice choice = For(new(), 90, 60);
        (choice.Columns, choice.Rows).Should().NotBe((1, 1));
        for (int column = 0; column + 1 < choice.Columns; column++)
        {
            PlanPoint right = choice.ProjectionOf(Bounds(90, 60), column, 0).ToPlan(new(choice.Layout.Plan.Right, choice.Layout.Plan.Top));
            PlanPoint left = choice.ProjectionOf(Bounds(90, 60), column + 1, 0).ToPlan(new(choice.Layout.Plan.Left, choice.Layout.Plan.Top));
            (right.XMetres - left.XMetres).Should().BeApproximately(1, 1e-3, "they share 10 mm at 1:100, and single precision carries a hundredth of a pixel");
        }

        Projection last = choice.ProjectionOf(Bounds(90, 60), choice.Columns - 1, choice.Rows - 1);
        last.ToPixel(PlanPoint.FromMetres(90, 0)).X.Should().BeLessThanOrEqualTo(choice.Layout.Plan.Right + 0.1f);
        last.ToPixel(PlanPoint.FromMetres(90, 0)).Y.Should().BeLessThanOrEqualTo(choice.Layout.Plan.Bottom + 0.1f);
    }

    private static SheetChoice For(SheetOptions options, double widthMetres, double heightMetres) =>
        SheetChoice.For(options, Bounds(widthMetres, heightMetres), KeyHeight, _ => 150);

    private static PlanBounds Bounds(double widthMetres, double heightMetres) => new(PlanPoint.FromMetres(0, 0), PlanPoint.FromMetres(widthMetres, heightMetres));
}
