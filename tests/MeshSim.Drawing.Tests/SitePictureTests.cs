using System.Text;
using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields;
using MeshSim.Studies;
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
        label.Request.Lines.Select(line => line.Text).Should().Equal("zone 1", "5.1\u00A0m²");
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
    public void Each_piece_of_a_zone_that_is_worth_it_is_named()
    {
        // Two pieces of 81 and 9 points, and a single point, which nobody would look for an outlet at.
        SitePlan plan = WithZone((column, row) => Math.Max(Math.Abs(column), Math.Abs(row)) <= 4 || Math.Max(Math.Abs(column - 8), Math.Abs(row)) <= 1 || (column, row) == (-8, 0));
        using var ink = new Ink();
        MapContents map = SitePicture.ContentsOf(SyntheticCoverage.Coverage, Upper, plan, PictureSize.OfScale(60), ink);

        map.Zones.Should().ContainSingle().Which.Patches.Select(patch => patch.Points.Length).Should().Equal(81, 9, 1);
        map.Labels.Where(label => label.Request.Kind == LabelKind.Zone).Select(label => string.Join(", ", label.Request.Lines.Select(line => line.Text)))
            .Should().Equal("zone 1, 5.1\u00A0m²", "zone 1");
    }

    [Fact]
    public void The_legend_hatches_each_zone_of_the_storey_as_the_map_does()
    {
        SitePlan plan = Plan(), two = plan with { Zones = [.. plan.Zones, (2, plan.Zones[0].Zone)] };
        RowsOf(two).Select(row => (row.Number, row.Text)).Should().Equal((1, "zone 1"), (2, "zone 2"));
        RowsOf(two with { IsHub = true }).Should().OnlyContain(row => row.Text == "the hub does as well here");
        SiteZone elsewhere = plan.Zones[0].Zone with { Parts = [new(TwoStoreyFlat.Ground, null, 4.5, 0.5, null, new(3))] };
        RowsOf(plan with { Zones = [(1, elsewhere)] }).Should().BeEmpty();

        static IEnumerable<ZoneRow> RowsOf(SitePlan plan)
        {
            using var ink = new Ink();
            return [.. SitePicture.ContentsOf(SyntheticCoverage.Coverage, Upper, plan, PictureSize.OfScale(60), ink).Column.Rows.OfType<ZoneRow>()];
        }
    }

    [Fact]
    public void Whose_devices_stand_beside_the_sites_of_a_hub_is_said_where_the_home_has_other_networks()
    {
        NetworkCoverage coverage = SyntheticCoverage.Coverage;
        Home twice = coverage.Home with { Networks = [coverage.Network, coverage.Network with { Name = new("other") }] };
        string words = $"devices: those of network {coverage.Network.Name} alone";
        NotesOf(coverage with { Home = twice }, isHub: true).Should().Contain(words);
        NotesOf(coverage with { Home = twice }, isHub: false).Should().NotContain(words, "the title names the network");
        NotesOf(coverage with { Home = coverage.Home with { Networks = [coverage.Network] } }, isHub: true).Should().NotContain(words);

        static IEnumerable<string> NotesOf(NetworkCoverage coverage, bool isHub)
        {
            using var ink = new Ink();
            return [.. SitePicture.ContentsOf(coverage, Upper, Plan() with { IsHub = isHub }, PictureSize.OfScale(60), ink).Column.Rows.OfType<NoteRow>().Select(row => row.Text)];
        }
    }

    [Fact]
    public void All_formats_show_the_zone_and_are_the_same_each_time()
    {
        foreach (PictureFormat format in Enum.GetValues<PictureFormat>())
        {
            byte[] file = SitePicture.Draw(SyntheticCoverage.Coverage, Upper, Plan(), PictureSize.Default, format);
            SitePicture.Draw(SyntheticCoverage.Coverage, Upper, Plan(), PictureSize.Default, format).Should().Equal(file);
            if (format == PictureFormat.Svg) Encoding.UTF8.GetString(file).Should().Contain(">zone 1<").And.Contain("any outlet in a zone does as well");
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
    private static SitePlan Plan() => WithZone((column, row) => Math.Max(Math.Abs(column), Math.Abs(row)) <= 4);

    /// <summary>A zone of the points for which something holds of their distance from the middle, in steps; the site is in the middle.</summary>
    private static SitePlan WithZone(Func<int, int, bool> isInside)
    {
        FieldGrid grid = FieldGrid.Over(SyntheticCoverage.Coverage.Home.FloorPlan, Upper, 0.25, 1);
        (int column, int row) = (grid.Columns / 2, grid.Rows / 2);
        Field spare = new(grid, [.. Enumerable.Range(0, grid.Count).Select(point => isInside((point % grid.Columns) - column, (point / grid.Columns) - row) ? 3f : -5f)]);
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
