using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.Propagation.Fields;
using MeshSim.Studies;
using SkiaSharp;

namespace MeshSim.Drawing.Tests;

public sealed class DifferencePictureTests
{
    [Theory]
    [InlineData(30, 15, "+10 to +20")]
    [InlineData(15, 50, "below -20")]
    [InlineData(20, 20, "-3 to +3")]
    [InlineData(0, 1, "neither covers")]
    [InlineData(30, float.NegativeInfinity, "+20 and more")]
    public void Each_place_has_the_class_of_its_difference(float first, float second, string range)
    {
        using var ink = new Ink();
        MapContents map = DifferencePicture.ContentsOf(Bands, MapOf(first, second), PictureSize.OfScale(45), ink);

        UniformFields.RangesOn(map).Should().Equal(range);
    }

    [Fact]
    public void The_picture_shows_what_its_contents_say_and_is_the_same_each_time()
    {
        BandMap map = MapOf(30, 15);
        using var ink = new Ink();
        MapContents contents = DifferencePicture.ContentsOf(Bands, map, PictureSize.OfScale(45), ink);

        byte[] png = DifferencePicture.Png(Bands, map, PictureSize.OfScale(45));

        using SKBitmap bitmap = SKBitmap.Decode(png);
        (bitmap.Width, bitmap.Height).Should().Be(((int)contents.Layout.Sheet.Width, (int)contents.Layout.Sheet.Height));
        bitmap.Pixels.Should().Contain(contents.Scale.Classes[contents.Scale.ClassOf(15)].Colour);
        contents.Words.Title.Should().Contain("against");
        DifferencePicture.Png(Bands, map, PictureSize.OfScale(45)).Should().Equal(png);
    }

    private static BandComparison Bands { get; } = new()
    {
        First = SyntheticCoverage.Coverage with { DesignMargin = new(6.4) },
        Second = SyntheticCoverage.Coverage with { DesignMargin = new(6.4), Network = SyntheticCoverage.Coverage.Network with { Name = new NetworkName("other") } },
        Rooms = [],
        Devices = [],
        Maps = [],
    };

    private static BandMap MapOf(float first, float second)
    {
        (Field firstField, Field secondField) = UniformFields.Of(first, second);
        return new(TwoStoreyFlat.Upper, firstField, secondField);
    }
}
