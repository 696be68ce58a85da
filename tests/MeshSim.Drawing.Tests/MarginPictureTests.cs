using System.Globalization;
using MeshSim.Drawing.Tests.Golden;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.Placement;
using MeshSim.Studies;
using SkiaSharp;

namespace MeshSim.Drawing.Tests;

public sealed class MarginPictureTests
{
    private static readonly PictureSize Small = PictureSize.OfScale(50);

    [Fact]
    public void The_ground_storey_looks_like_the_stored_picture() =>
        PictureComparison.ShouldLookLike(Draw(Small), "two-storey-flat-ground.png");

    [Fact]
    public void The_upper_storey_looks_like_the_stored_picture() =>
        PictureComparison.ShouldLookLike(
            MarginPicture.Png(SyntheticCoverage.Coverage, SyntheticCoverage.Map(TwoStoreyFlat.Upper), SyntheticCoverage.Repeaters, Small), "two-storey-flat-upper.png");

    [Fact]
    public void The_same_input_gives_the_same_bytes_under_any_culture()
    {
        byte[] first = Draw(Small);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = DecimalComma();
            Draw(Small).Should().Equal(first);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Pictures_drawn_side_by_side_do_not_disturb_each_other()
    {
        byte[] alone = Draw(Small);
        byte[][] together = new byte[4][];

        Parallel.For(0, together.Length, i => together[i] = Draw(Small));

        foreach (byte[] picture in together) picture.Should().Equal(alone);
    }

    [Fact]
    public void The_default_sheet_is_as_wide_as_it_says()
    {
        using SKBitmap bitmap = SKBitmap.Decode(Draw(PictureSize.Default));

        bitmap.Width.Should().Be(PictureSize.Default.Width);
    }

    [Fact]
    public void A_storey_without_rooms_is_filled_to_the_edge_of_the_grid()
    {
        var plan = TwoStoreyFlat.Home.FloorPlan;
        NetworkCoverage bare = SyntheticCoverage.Coverage with
        {
            Home = TwoStoreyFlat.Home with { FloorPlan = plan with { Storeys = [.. plan.Storeys.Select(storey => storey with { Rooms = [] })] } },
        };
        MarginMap map = SyntheticCoverage.Map(TwoStoreyFlat.Ground) with { Rooms = [] };

        MarginPicture.Png(bare, map, null, Small).Should().NotEqual(MarginPicture.Png(SyntheticCoverage.Coverage, map, null, Small));
    }

    [Fact]
    public void A_map_of_another_network_is_refused()
    {
        Action draw = () => MarginPicture.Png(
            SyntheticCoverage.Coverage, SyntheticCoverage.Map(TwoStoreyFlat.Ground, 0.5) with { Network = new("lighting") }, null, Small);

        draw.Should().Throw<ArgumentException>().WithMessage("*\"lighting\", not \"plugs\"*");
    }

    [Fact]
    public void Repeaters_of_another_network_are_refused()
    {
        RepeaterPlacement other = SyntheticCoverage.Repeaters with { Network = new("lighting") };

        Action draw = () => MarginPicture.Png(SyntheticCoverage.Coverage, SyntheticCoverage.Map(TwoStoreyFlat.Ground, 0.5), other, Small);

        draw.Should().Throw<ArgumentException>().WithMessage("*\"lighting\", not \"plugs\"*");
    }

    private static CultureInfo DecimalComma()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        return culture;
    }

    private static byte[] Draw(PictureSize size) =>
        MarginPicture.Png(SyntheticCoverage.Coverage, SyntheticCoverage.Map(TwoStoreyFlat.Ground), SyntheticCoverage.Repeaters, size);
}
