using CsCheck;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Tests.Sheets;

public sealed class StoreyPackingTests
{
    private const double Width = 864, Height = 994, AroundX = 92, AroundY = 116;

    /// <summary>Rounding of a handful of sums and one division in double precision, pixels.</summary>
    private const double Rounding = 1e-9;

    private static readonly Gen<PlanBounds[]> Houses =
        Gen.Select(Gen.Double[2, 30], Gen.Double[2, 30]).Array[1, 6].Select(sizes => sizes.Select(size => Plan(size.Item1, size.Item2)).ToArray());

    [Fact]
    public void A_long_storey_stands_beside_two_short_ones()
    {
        StoreyPacking packing = StoreyPacking.Of([Plan(6, 23), Plan(6, 11), Plan(6, 8)], Width, Height, AroundX, AroundY);

        packing.Columns.Should().Equal(1, 2);
    }

    [Fact]
    public void Wide_storeys_stand_one_below_the_other() =>
        StoreyPacking.Of([Plan(20, 6), Plan(20, 6)], Width, Height, AroundX, AroundY).Columns.Should().Equal(2);

    [Fact]
    public void All_plans_fit_with_what_is_around_them() =>
        Houses.Sample(house =>
        {
            StoreyPacking packing = StoreyPacking.Of(house, Width, Height, AroundX, AroundY);
            packing.Columns.Sum().Should().Be(house.Length);
            double width = 0;
            int first = 0;
            foreach (int count in packing.Columns)
            {
                PlanBounds[] column = house[first..(first += count)];
                width += (column.Max(plan => plan.WidthMetres) * packing.PixelsPerMetre) + AroundX;
                column.Sum(plan => (plan.HeightMetres * packing.PixelsPerMetre) + AroundY).Should().BeLessThanOrEqualTo(Height + Rounding);
            }

            width.Should().BeLessThanOrEqualTo(Width + Rounding);
        });

    [Fact]
    public void No_other_division_allows_a_greater_scale() =>
        Houses.Where(house => house.Length <= 3).Sample(house =>
        {
            double best = StoreyPacking.Of(house, Width, Height, AroundX, AroundY).PixelsPerMetre;

            // Each storey alone is an upper bound; all in a row and all in a column are divisions of their own.
            double row = Math.Min(
                (Width - (house.Length * AroundX)) / house.Sum(plan => plan.WidthMetres), (Height - AroundY) / house.Max(plan => plan.HeightMetres));
            double column = Math.Min(
                (Width - AroundX) / house.Max(plan => plan.WidthMetres), (Height - (house.Length * AroundY)) / house.Sum(plan => plan.HeightMetres));
            best.Should().BeGreaterThanOrEqualTo(Math.Max(row, column) - Rounding);
        });

    private static PlanBounds Plan(double widthMetres, double heightMetres) => new(PlanPoint.FromMetres(0, 0), PlanPoint.FromMetres(widthMetres, heightMetres));
}
