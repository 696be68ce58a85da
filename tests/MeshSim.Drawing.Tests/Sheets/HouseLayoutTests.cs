using CsCheck;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Tests.Sheets;

public sealed class HouseLayoutTests
{
    /// <summary>Pixels are single precision: a coordinate of a thousand is known to a ten-thousandth.</summary>
    private const float Rounding = 0.01f;

    private static readonly Gen<PlanBounds[]> Houses =
        Gen.Select(Gen.Double[1, 25], Gen.Double[1, 25]).Array[1, 5].Select(sizes => sizes.Select(size => Plan(size.Item1, size.Item2)).ToArray());

    [Fact]
    public void Maps_lie_on_the_sheet_apart_from_each_other_and_hold_their_plans() =>
        Houses.Sample(house =>
        {
            int drawn = 0;
            foreach (HouseLayout sheet in HouseLayout.Sheets(house))
            {
                PixelBox[] parts =
                [
                    .. sheet.Storeys.Select(layout => layout.Map with { Top = layout.Map.Top - HouseLayout.CaptionHeight }),
                    sheet.Storeys[0].Title, sheet.Storeys[0].Column, sheet.Storeys[0].Strip, sheet.Storeys[0].Footer,
                ];
                parts.Should().OnlyContain(part => sheet.Sheet.Holds(part));
                for (int i = 0; i < parts.Length; i++)
                    for (int j = 0; j < i; j++)
                        parts[i].Overlaps(parts[j]).Should().BeFalse("parts {0} and {1} are apart", i, j);
                foreach (SheetLayout layout in sheet.Storeys)
                {
                    Pixel low = layout.Projection.ToPixel(house[drawn].Low), high = layout.Projection.ToPixel(house[drawn].High);
                    layout.Map.Grown(Rounding).Holds(new(low.X, high.Y, high.X, low.Y)).Should().BeTrue("storey {0} lies on its map", drawn);
                    drawn++;
                }
            }

            drawn.Should().Be(house.Length);
        });

    [Fact]
    public void Storeys_of_one_sheet_share_a_scale() =>
        HouseLayout.Sheets([Plan(6, 23), Plan(6, 11), Plan(6, 8)]).Should().ContainSingle()
            .Which.Storeys.Select(layout => layout.Projection.PixelsPerMetre).Distinct().Should().ContainSingle();

    [Fact]
    public void Storeys_that_would_be_too_small_take_a_sheet_each() =>
        HouseLayout.Sheets([Plan(20, 20), Plan(20, 20)]).Should().HaveCount(2);

    [Fact]
    public void A_sheet_is_no_taller_than_a_page_of_A4_is_for_its_width()
    {
        const double pageProportion = 297.0 / 210;
        foreach (HouseLayout sheet in HouseLayout.Sheets([Plan(6, 40), Plan(6, 11), Plan(30, 8)]))
            (sheet.Sheet.Height / sheet.Sheet.Width).Should().BeLessThan((float)pageProportion);
    }

    private static PlanBounds Plan(double widthMetres, double heightMetres) => new(PlanPoint.FromMetres(-1, 2), PlanPoint.FromMetres(widthMetres - 1, heightMetres + 2));
}
