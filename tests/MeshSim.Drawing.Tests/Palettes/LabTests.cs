using MeshSim.Drawing.Palettes;
using SkiaSharp;

namespace MeshSim.Drawing.Tests.Palettes;

public sealed class LabTests
{
    /// <summary>A channel is rounded to one of 256 steps, so it may come back one step off.</summary>
    private const int ChannelTolerance = 1;

    [Fact]
    public void Colours_come_back_from_an_independent_conversion()
    {
        for (int code = 0; code < 0x1000; code++)
        {
            var colour = new SKColor((byte)(17 * (code >> 8)), (byte)(17 * ((code >> 4) & 15)), (byte)(17 * (code & 15)));
            (double lightness, double a, double b) = ColourVision.All[0].See(colour);

            SKColor back = new Lab(lightness, a, b).ToColour();

            ((int)back.Red).Should().BeCloseTo(colour.Red, ChannelTolerance);
            ((int)back.Green).Should().BeCloseTo(colour.Green, ChannelTolerance);
            ((int)back.Blue).Should().BeCloseTo(colour.Blue, ChannelTolerance);
        }
    }

    [Fact]
    public void The_default_is_black() => default(Lab).ToColour().Should().Be(SKColors.Black);

    [Fact]
    public void The_middle_lies_between() => Lab.Between(new(20, -10, 0), new(60, 10, 8), 0.5).Should().Be(new Lab(40, 0, 4));
}
