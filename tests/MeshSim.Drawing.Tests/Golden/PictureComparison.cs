using SkiaSharp;

namespace MeshSim.Drawing.Tests.Golden;

/// <summary>Compares a picture with a stored one, pixel by pixel.</summary>
internal static class PictureComparison
{
    /// <summary>
    /// A pixel counts as different when a channel differs by more than this: the edges of text and slanted lines may differ by a
    /// few shades between builds of the font and vector code.
    /// </summary>
    private const int ChannelTolerance = 40;

    /// <summary>Share of pixels that may differ: 300 of a million, scattered along edges. One moved label of ten letters is more.</summary>
    private const double ShareTolerance = 0.0003;

    /// <summary>Fails when the pictures differ, and then leaves the new one and a picture of the differences beside the tests.</summary>
    public static void ShouldLookLike(byte[] png, string golden)
    {
        string folder = Path.Combine(AppContext.BaseDirectory, "Golden"), name = Path.GetFileNameWithoutExtension(golden);
        string stored = Path.Combine(folder, golden), actual = Path.Combine(folder, name + ".actual.png"), difference = Path.Combine(folder, name + ".difference.png");
        Directory.CreateDirectory(folder);
        File.WriteAllBytes(actual, png);
        File.Exists(stored).Should().BeTrue("the stored picture must exist; when {0} is right, copy it to tests/MeshSim.Drawing.Tests/Golden/{1}", actual, golden);

        using SKBitmap expected = SKBitmap.Decode(stored), drawn = SKBitmap.Decode(png);
        (drawn.Width, drawn.Height).Should().Be((expected.Width, expected.Height), "the sheet {0} has the stored size", actual);
        double share = Mark(expected.Pixels, drawn.Pixels, expected.Width, difference);
        share.Should().BeLessThanOrEqualTo(ShareTolerance, "{0} shows in red where {1} differs; when it is right, copy it over the stored one", difference, actual);
        File.Delete(difference);
    }

    private static double Mark(SKColor[] expected, SKColor[] drawn, int width, string file)
    {
        SKColor[] marks = [.. expected.Zip(drawn, (a, b) => DoDiffer(a, b) ? SKColors.Red : Faded(a))];
        using var bitmap = new SKBitmap(width, expected.Length / width) { Pixels = marks };
        using SKData png = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        File.WriteAllBytes(file, png.ToArray());
        return marks.Count(mark => mark == SKColors.Red) / (double)marks.Length;
    }

    private static bool DoDiffer(SKColor a, SKColor b) =>
        Math.Abs(a.Red - b.Red) > ChannelTolerance || Math.Abs(a.Green - b.Green) > ChannelTolerance || Math.Abs(a.Blue - b.Blue) > ChannelTolerance;

    private static SKColor Faded(SKColor colour) => new((byte)(128 + (colour.Red / 2)), (byte)(128 + (colour.Green / 2)), (byte)(128 + (colour.Blue / 2)));
}
