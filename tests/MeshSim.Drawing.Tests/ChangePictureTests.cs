using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Palettes;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.Propagation.Fields;
using MeshSim.Studies;
using MeshSim.Studies.Changes;
using SkiaSharp;

namespace MeshSim.Drawing.Tests;

public sealed class ChangePictureTests
{
    private static readonly NetworkRehearsal Rehearsal =
        new() { Coverage = SyntheticCoverage.Coverage with { DesignMargin = new(6.4) }, Options = new(), Rehearsals = [], Chances = [] };

    private static readonly NetworkChanges Changes = new() { Before = Rehearsal, After = Rehearsal, Devices = [], Outages = [], Rooms = [], Maps = [] };

    [Theory]
    [InlineData(15, 30, "+10 to +20")]
    [InlineData(30, 15, "-20 to -10")]
    [InlineData(20, 20, "-3 to +3")]
    [InlineData(0, 1, "neither covers")]
    [InlineData(float.NegativeInfinity, 30, "+20 and more")]
    public void More_margin_after_is_on_the_side_of_better(float before, float after, string range)
    {
        using var ink = new Ink();
        MapContents map = ChangePicture.ContentsOf(Changes, MapOf(before, after), PictureSize.OfScale(45), ink);

        UniformFields.RangesOn(map).Should().Equal(range);
    }

    [Fact]
    public void Devices_are_shown_as_they_are_after_and_no_line_runs_around_what_is_alike()
    {
        using var ink = new Ink();
        MapContents map = ChangePicture.ContentsOf(Changes, MapOf(20, 20), PictureSize.OfScale(45), ink);

        map.Marks.Devices.Select(mark => mark.Device.Id).Should()
            .Equal(SyntheticCoverage.Coverage.Home.DevicesOf(SyntheticCoverage.Coverage.Network).Where(device => device.Storey == TwoStoreyFlat.Upper).Select(device => device.Id))
            .And.NotBeEmpty();
        map.Contours.Should().BeEmpty();
    }

    [Fact]
    public void The_picture_is_the_same_each_time()
    {
        byte[] png = ChangePicture.Draw(Changes, MapOf(15, 30), PictureSize.OfScale(45), PictureFormat.Png);

        using SKBitmap bitmap = SKBitmap.Decode(png);
        bitmap.Pixels.Should().Contain(new DifferenceScale().Classes[^2].Colour);
        ChangePicture.Draw(Changes, MapOf(15, 30), PictureSize.OfScale(45), PictureFormat.Png).Should().Equal(png);
    }

    private static MarginChange MapOf(float before, float after)
    {
        (Field beforeField, Field afterField) = UniformFields.Of(before, after);
        return new(TwoStoreyFlat.Upper, beforeField, afterField);
    }
}
