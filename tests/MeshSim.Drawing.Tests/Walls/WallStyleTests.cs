using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.Drawing.Walls;
using MeshSim.FloorPlans;
using MeshSim.Materials;
using SkiaSharp;

namespace MeshSim.Drawing.Tests.Walls;

public sealed class WallStyleTests
{
    [Theory]
    [InlineData("brick", WallStyle.Masonry)]
    [InlineData("plaster brick plaster", WallStyle.Masonry)]
    [InlineData("concrete air plasterboard", WallStyle.Masonry)]
    [InlineData("plasterboard air plasterboard", WallStyle.Boarded)]
    [InlineData("plaster wood air wood plaster", WallStyle.Boarded)]
    [InlineData("wood", WallStyle.Timber)]
    [InlineData("glass", WallStyle.Glass)]
    [InlineData("brick metal", WallStyle.Metal)]
    [InlineData("insulation", WallStyle.Boarded)]
    [InlineData("", WallStyle.Stated)]
    internal void The_layers_decide(string materials, WallStyle expected) =>
        WallStyles.Of(new("made"), HomeWith(materials)).Should().Be(expected);

    [Fact]
    public void A_construction_that_the_home_does_not_know_is_solid() =>
        WallStyles.Of(new("unheard-of"), TwoStoreyFlat.Home).Should().Be(WallStyle.Masonry);

    [Fact]
    public void No_two_styles_look_alike_in_grey()
    {
        WallStyle[] styles = Enum.GetValues<WallStyle>();
        byte[][] drawn = [.. styles.Select(Grey)];

        for (int i = 0; i < styles.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                int differing = drawn[i].Zip(drawn[j]).Count(pair => Math.Abs(pair.First - pair.Second) > 64);
                differing.Should().BeGreaterThan(40, "{0} and {1} differ along the whole sample", styles[i], styles[j]);
            }
        }
    }

    private static byte[] Grey(WallStyle style)
    {
        using var bitmap = new SKBitmap(60, 12);
        using var canvas = new SKCanvas(bitmap);
        using var ink = new Ink();
        canvas.Clear(Tone.Paper);
        WallStyles.Draw(style, new(new(0, 6), new(1, 0), 60, ThicknessPixels: 10), 0, 60, new CanvasPen(canvas, ink));
        return [.. bitmap.Pixels.Select(pixel => (byte)((0.2126 * pixel.Red) + (0.7152 * pixel.Green) + (0.0722 * pixel.Blue)))];
    }

    private static Home HomeWith(string materials) => TwoStoreyFlat.Home with
    {
        Constructions = ImmutableDictionary<ConstructionName, Construction>.Empty.Add(new("made"), new()
        {
            Name = new("made"),
            Description = "made",
            Use = ConstructionUse.Wall,
            Spread = new(2),
            Source = "assumed",
            Layers = [.. materials.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(name => new Layer(
                new() { Name = name, Edition = "assumed", A = 4, B = 0, C = 0.02, D = 0, FrequencyGigahertz = new(1, 40, "GHz"), Source = "assumed" }, 0.01))],
        }),
    };
}
