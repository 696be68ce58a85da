using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Palettes;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.Placement;
using MeshSim.Quantities;
using MeshSim.Studies;

namespace MeshSim.Drawing.Tests.Legends;

public sealed class ColumnTests
{
    [Fact]
    public void The_answer_comes_first()
    {
        Column column = Write(SyntheticCoverage.Coverage, SyntheticCoverage.Repeaters);

        column.Rows.OfType<HeadingRow>().Select(row => row.Text).Should()
            .Equal("15 of 19 devices reached reliably", "Add 2 repeaters", "Link margin, dB", "Signs", "Walls");
        column.Rows.OfType<NoteRow>().Select(row => row.Text).Should()
            .Contain("sink-leak (ground)").And.Contain("2 kitchen-outlet, kitchen (ground)");
    }

    [Fact]
    public void Who_has_one_way_is_not_said_to_have_none()
    {
        UnservedDevice leak = new(new("sink-leak"), new Decibels(3), "kettle-plug");
        RepeaterPlacement placement = SyntheticCoverage.Repeaters with
        {
            Unserved =
            [
                leak, leak with { Case = new(null, "kettle-plug") }, leak with { Device = new("lamp"), Case = new(null, "kettle-plug") },
                leak with { Device = new("lamp"), Case = new(null, "fan") }, leak with { Device = new("oven"), Case = new("bedtime", null) },
            ],
        };

        string[] notes = [.. Write(SyntheticCoverage.Coverage, placement).Rows.OfType<NoteRow>().Select(row => row.Text)];
        notes.Should().ContainInOrder("No outlet serves sink-leak", "lamp hangs on kettle-plug and 1 more", "oven: no way in bedtime");
        notes.Should().NotContain(note => note.StartsWith("sink-leak hangs", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_class_of_the_scale_is_explained_highest_first()
    {
        Column column = Write(SyntheticCoverage.Coverage, null);

        column.Rows.OfType<ClassRow>().Select(row => row.Class).Should().Equal(new MarginScale(SyntheticCoverage.DesignMargin).Classes.Reverse());
    }

    [Fact]
    public void The_lowest_class_promises_no_silence()
    {
        ClassRow lowest = Write(SyntheticCoverage.Coverage, null).Rows.OfType<ClassRow>().Last();

        lowest.Text.Should().Be("below 0: mostly lost", "shadowing lets a frame through now and then");
    }

    [Fact]
    public void Exactly_the_symbols_of_the_storey_are_explained()
    {
        Column column = Write(SyntheticCoverage.Coverage, null);

        column.Rows.OfType<SymbolRow>().Sum(row => row.Second is null ? 1 : 2).Should().Be(11);
        column.Rows.OfType<RolesRow>().Single().Roles.Should().Equal(Role.Coordinator, Role.Router, Role.EndDevice);
        column.Rows.OfType<SignRow>().Should().NotContain(row => row.Sign == Sign.Repeater, "none was asked for");
    }

    [Fact]
    public void A_long_list_ends_with_a_count_of_the_rest()
    {
        NetworkCoverage coverage = SyntheticCoverage.Coverage with
        {
            Devices = [.. SyntheticCoverage.Coverage.Devices.Select(reach => reach with { Route = null, NearestLink = null })],
        };

        NoteRow[] notes = [.. Write(coverage, null).Rows.OfType<NoteRow>()];

        notes[0].Text.Should().Be("No reliable way:");
        notes[8].Text.Should().Be("and 12 more");
    }

    [Theory]
    [InlineData(true, "No repeater needed")]
    [InlineData(false, "No repeater helps")]
    public void An_empty_recommendation_says_why(bool servesAll, string heading)
    {
        RepeaterPlacement placement = SyntheticCoverage.Repeaters with
        {
            Repeaters = [],
            Unserved = servesAll ? [] : [new(new("sink-leak"), new Decibels(3), "kettle-plug")],
        };

        Write(SyntheticCoverage.Coverage, placement).Rows.OfType<HeadingRow>().Should().Contain(row => row.Text == heading);
    }

    [Fact]
    public void All_text_fits_the_column()
    {
        using var ink = new Ink();

        foreach (NoteRow row in Write(SyntheticCoverage.Coverage, SyntheticCoverage.Repeaters).Rows.OfType<NoteRow>())
            (row.IndentPixels + ink.WidthOf(row.Text, row.Style)).Should().BeLessThanOrEqualTo(SheetLayout.ColumnWidth);
    }

    private static Column Write(NetworkCoverage coverage, RepeaterPlacement? placement)
    {
        using var ink = new Ink();
        MarginMap map = SyntheticCoverage.Map(TwoStoreyFlat.Ground, 0.5);
        return Column.Of(coverage, map, placement, new(map.DesignMargin), ink);
    }
}
