using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Layers;
using MeshSim.Drawing.Margins;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Tests.Scenes;
using SkiaSharp;

namespace MeshSim.Drawing.Tests.Layers;

public sealed class LayersTests
{
    private static readonly SKColor Untouched = SKColors.Magenta;

    [Fact]
    public void Every_layer_draws_something()
    {
        // Only the upper storey has a dark corner, only the ground storey has objects.
        MapContents upper = Contents.Of(TwoStoreyFlat.Upper, PictureSize.OfScale(45)), ground = Contents.Of(TwoStoreyFlat.Ground, PictureSize.OfScale(45));

        foreach (ILayer layer in MarginPicture.Layers)
        {
            using SKBitmap bitmap = Draw(layer is ObjectLayer ? ground : upper, layer);
            Array.Exists(bitmap.Pixels, pixel => pixel != Untouched).Should().BeTrue(layer.GetType().Name);
        }
    }

    [Fact]
    public void Hatch_lines_lie_below_the_design_margin_and_nowhere_else()
    {
        MapContents map = Contents.Of(TwoStoreyFlat.Upper, PictureSize.OfScale(45));
        MarginRaster raster = map.Raster;
        using SKBitmap bitmap = Draw(map, new HatchLayer());
        int hatched = 0, wrong = 0;
        for (int row = 0; row < raster.Height; row++)
        {
            for (int column = 0; column < raster.Width; column++)
            {
                byte index = raster[column, row];
                bool isDark = index != MarginRaster.Outside && map.Scale.Classes[index].IsBelowDesign;
                bool isOnLine = (raster.Left + column + raster.Top + row) % HatchLayer.Period is 0 or 1 or HatchLayer.Period - 1;
                bool isDrawn = bitmap.GetPixel(raster.Left + column, raster.Top + row) != Untouched;
                if (isDrawn != (isDark && isOnLine)) wrong++;
                if (isDrawn) hatched++;
            }
        }

        wrong.Should().Be(0);
        hatched.Should().BeGreaterThan(1000, "the study is dark in one corner");
    }

    [Fact]
    public void Heat_has_the_colour_of_the_class_inside_and_leaves_paper_outside()
    {
        MapContents map = Contents.Of(TwoStoreyFlat.Ground, PictureSize.OfScale(45));
        using SKBitmap bitmap = Draw(map, new HeatLayer());
        MarginRaster raster = map.Raster;
        int wrong = 0;
        for (int row = 0; row < raster.Height; row++)
        {
            for (int column = 0; column < raster.Width; column++)
            {
                byte index = raster[column, row];
                SKColor expected = index == MarginRaster.Outside ? Untouched : map.Scale.Classes[index].Colour;
                if (bitmap.GetPixel(raster.Left + column, raster.Top + row) != expected) wrong++;
            }
        }

        wrong.Should().Be(0);
    }

    [Fact]
    public void A_wall_is_missing_where_its_door_is()
    {
        MapContents map = Contents.Of(TwoStoreyFlat.Ground, PictureSize.OfScale(45));
        using SKBitmap bitmap = Draw(map, new WallLayer());

        ColourAt(map, bitmap, 9, 2.4).Should().Be(Untouched, "the back door is there");
        ColourAt(map, bitmap, 9, 1.0).Should().Be(Tone.Wall);
    }

    [Theory]
    [InlineData(10, 20)]
    [InlineData(110, 2)]
    [InlineData(45, 5)]
    [InlineData(900, 1)]
    public void The_scale_bar_is_the_longest_round_length_that_fits(double pixelsPerMetre, int metres) =>
        ScaleBarLayer.LengthMetres(new(pixelsPerMetre, new(0, 0))).Should().Be(metres);

    private static SKColor ColourAt(MapContents map, SKBitmap bitmap, double xMetres, double yMetres)
    {
        Pixel pixel = map.Layout.Projection.ToPixel(TwoStoreyFlat.At(xMetres, yMetres));
        return bitmap.GetPixel((int)pixel.X, (int)pixel.Y);
    }

    private static SKBitmap Draw(MapContents map, ILayer layer)
    {
        var bitmap = new SKBitmap((int)map.Layout.Sheet.Width, (int)map.Layout.Sheet.Height);
        using var canvas = new SKCanvas(bitmap);
        using var ink = new Ink();
        canvas.Clear(Untouched);
        layer.Draw(map, new CanvasPen(canvas, ink));
        return bitmap;
    }
}
