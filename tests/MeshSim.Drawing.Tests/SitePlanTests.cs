using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Placement;
using MeshSim.Quantities;
using MeshSim.Studies.Sites;

namespace MeshSim.Drawing.Tests;

public sealed class SitePlanTests
{
    private const string NoWay = "no way: devices without one everyday, whatever is plugged in";
    private const string NotAll = "not all: devices with a way, but not all that is asked";

    [Fact]
    public void A_site_of_the_hub_is_told_with_those_who_have_no_way_and_those_who_have_not_all()
    {
        SitePlan plan = SitePlan.Of(Hub(Site("spot", 120, unserved: 3, outOfReach: 1), Site(null, 60, unserved: 2, outOfReach: 2)), review: null);

        plan.Lines.Should().Equal(
            "1  spot: cost 120, 1\u00A0no\u00A0way, 2\u00A0not\u00A0all",
            "2  where it is now (C): cost 60, 2\u00A0no\u00A0way");
        plan.Sites.Select(site => site.Number).Should().Equal([1], "the present site has no outlet");
    }

    [Fact]
    public void Only_words_that_occur_are_explained()
    {
        SitePlan.Of(Hub(Site(null, 0)), review: null).Note.Should().BeEmpty();
        SitePlan.Of(Hub(Site(null, 0, unserved: 1)), review: null).Note.Should().Be(NotAll);
        SitePlan.Of(Hub(Site(null, 0, unserved: 1, outOfReach: 1)), review: null).Note.Should().Be(NoWay);
        SitePlan.Of(Hub(Site(null, 0, unserved: 1), Site("spot", 60, unserved: 1, outOfReach: 1)), review: null).Note.Should().Be($"{NoWay}; {NotAll}");
    }

    [Fact]
    public void A_cost_that_is_not_proven_is_told_as_such() =>
        SitePlan.Of(Hub(Site(null, 60) with { LowerBound = 40 }), review: null).Lines.Should().Equal("1  where it is now (C): cost 60 or less");

    [Fact]
    public void The_longest_line_and_the_note_fit_into_the_column()
    {
        SitePlan plan = SitePlan.Of(Hub(Site("kitchen-worktop-left", 160, unserved: 113, outOfReach: 101)), review: null);
        using var ink = new Ink();
        NoteRow[] rows =
        [
            .. SitePicture.ContentsOf(SyntheticCoverage.Coverage, TwoStoreyFlat.Upper, plan, PictureSize.OfScale(60), ink).Column.Rows.OfType<NoteRow>(),
        ];

        string.Join(' ', rows.Select(row => row.Text)).Should().Contain("101\u00A0no\u00A0way, 12\u00A0not\u00A0all").And.Contain($"{NoWay}; {NotAll}");
        rows.Should().OnlyContain(row => row.IndentPixels + ink.WidthOf(row.Text, row.Style) <= SheetLayout.ColumnWidth);
    }

    [Theory]
    [InlineData(0.8, "0.8")]
    [InlineData(1.25, "1")]
    [InlineData(68.1, "68")]
    public void The_zone_of_a_repeater_is_rounded_as_in_the_sentences(double squareMetres, string rounded)
    {
        SiteZone zone = new() { Spare = [], Parts = [new(TwoStoreyFlat.Upper, null, squareMetres, 0.5, null, new(3))] };

        string[] lines = [.. SitePlan.Of(SyntheticCoverage.Repeaters, PlacementReview.Nothing with { Zones = [zone] }).Lines];

        lines[0].Should().EndWith($": zone\u00A0{rounded}\u00A0m²");
        lines[1].Should().StartWith("2  ").And.NotContain("zone");
    }

    private static HubPlacement Hub(params HubSite[] sites) => new()
    {
        Networks = [SyntheticCoverage.Coverage.Network.Name],
        Goals = PlacementGoals.Default,
        StatesHeld = [],
        SitesConsidered = sites.Length,
        OutletsSwitchedOff = 0,
        Apart = [],
        Sites = [.. sites],
    };

    private static HubSite Site(string? outlet, int cost, int unserved = 0, int outOfReach = 0)
    {
        ImmutableArray<DeviceId> devices = [.. Enumerable.Range(0, unserved).Select(number => new DeviceId(FormattableString.Invariant($"device{number}")))];
        return new(
            outlet is null ? null : new() { Id = new(outlet), Storey = TwoStoreyFlat.Upper, Point = PlanPoint.FromMetres(1, 1), HeightMetres = 0.3 },
            cost,
            cost,
            [new(SyntheticCoverage.Coverage.Network.Name, [], [], devices, devices[..outOfReach], new Decibels(8), cost, cost, 0)]);
    }
}
