using System.Text;
using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields;
using MeshSim.Studies.Sites;
using SkiaSharp;

namespace MeshSim.Drawing.Tests;

public sealed class SitePictureTests
{
    private static readonly StoreyName Upper = TwoStoreyFlat.Upper;

    [Fact]
    public void Sites_are_numbered_and_their_zones_named_with_their_area()
    {
        using var ink = new Ink();
        MapContents map = SitePicture.ContentsOf(SyntheticCoverage.Coverage, Upper, Plan(), PictureSize.OfScale(60), ink);

        map.Marks.Repeaters.Select(mark => (mark.Number, mark.Outlet.Id.Value)).Should().Equal((1, "spot"));
        PlacedLabel label = map.Labels.Should().ContainSingle(label => label.Request.Kind == LabelKind.Zone).Subject;
        label.Request.Lines.Select(line => line.Text).Should().Equal("zone 1", "4.5\u00A0m²");
        map.Labels.Should().Contain(label => label.Request.Kind == LabelKind.Repeater && label.Request.Lines[0].Text == "add repeater: spot");
        map.Contours.Should().BeEmpty("a map of sites shows no margins");
    }

    [Fact]
    public void A_zone_is_hatched_inside_and_outlined_all_around()
    {
        using var ink = new Ink();
        MapContents map = SitePicture.ContentsOf(SyntheticCoverage.Coverage, Upper, Plan(), PictureSize.OfScale(60), ink);
        map.Zones.Should().ContainSingle().Which.Edges.Should().ContainSingle();

        using SKBitmap bitmap = SKBitmap.Decode(SitePicture.Draw(SyntheticCoverage.Coverage, Upper, Plan(), PictureSize.OfScale(60), PictureFormat.Png));
        using SKBitmap without = SKBitmap.Decode(SitePicture.Draw(SyntheticCoverage.Coverage, Upper, Plan() with { Zones = [] }, PictureSize.OfScale(60), PictureFormat.Png));
        bitmap.Pixels.Should().Contain(Tone.Zone, "the outline is opaque");
        without.Pixels.Should().NotContain(Tone.Zone);
    }

    [Fact]
    public void All_formats_show_the_zone_and_are_the_same_each_time()
    {
        foreach (PictureFormat format in Enum.GetValues<PictureFormat>())
        {
            byte[] file = SitePicture.Draw(SyntheticCoverage.Coverage, Upper, Plan(), PictureSize.Default, format);
            SitePicture.Draw(SyntheticCoverage.Coverage, Upper, Plan(), PictureSize.Default, format).Should().Equal(file);
            if (format == PictureFormat.Svg) Encoding.UTF8.GetString(file).Should().Contain(">zone 1<").And.Contain("any outlet here does as well");
        }
    }

    [Fact]
    public void A_storey_without_site_or_zone_is_not_shown()
    {
        SitePlan plan = Plan();
        plan.Shows(Upper).Should().BeTrue();
        plan.Shows(TwoStoreyFlat.Ground).Should().BeFalse();
        (plan with { Sites = [] }).Shows(Upper).Should().BeTrue("its zone lies there");
        (plan with { Sites = [], Zones = [] }).Shows(Upper).Should().BeFalse();
    }

    /// <summary>A zone of two metres by two about the middle of the storey, with the site in it.</summary>
    private static SitePlan Plan()
    {
        FieldGrid grid = FieldGrid.Over(SyntheticCoverage.Coverage.Home.FloorPlan, Upper, 0.25, 1);
        (int column, int row) = (grid.Columns / 2, grid.Rows / 2);
        Field spare = new(grid, [.. Enumerable.Range(0, grid.Count).Select(point =>
            Math.Abs((point % grid.Columns) - column) <= 4 && Math.Abs((point / grid.Columns) - row) <= 4 ? 3f : -5f)]);
        PlanPoint middle = grid.At(column, row).Plan;
        return new()
        {
            Title = "repeaters",
            Heading = "Add 1 repeater",
            Lines = ["1  spot"],
            Sites = [new NumberedSite(1, new Outlet { Id = new("spot"), Storey = Upper, Point = middle, HeightMetres = 0.3 })],
            Zones = [(1, new SiteZone { Spare = [spare], Parts = [new(Upper, null, 4.5, 0.5, null, new(3))] })],
        };
    }
}
