using SkiaSharp;

namespace MeshSim.Drawing.Tests.Golden;

public sealed class PictureComparisonTests
{
    private const string Stored = "comparison-self-test.png";

    private static string Folder => Path.Combine(AppContext.BaseDirectory, "Golden");

    [Fact]
    public void A_picture_with_one_more_label_fails_and_leaves_a_picture_of_the_difference()
    {
        File.WriteAllBytes(Path.Combine(Folder, Stored), Picture(hasLabel: false));

        Action compare = () => PictureComparison.ShouldLookLike(Picture(hasLabel: true), Stored);

        compare.Should().Throw<Exception>().WithMessage("*comparison-self-test.difference.png*");
        using SKBitmap difference = SKBitmap.Decode(Path.Combine(Folder, "comparison-self-test.difference.png"));
        difference.GetPixel(110, 105).Should().Be(SKColors.Red);
        difference.GetPixel(10, 10).Should().NotBe(SKColors.Red);
    }

    private static byte[] Picture(bool hasLabel)
    {
        using var bitmap = new SKBitmap(1000, 1000);
        bitmap.Erase(SKColors.White);
        if (hasLabel) bitmap.Erase(SKColors.Black, new SKRectI(100, 100, 160, 112));
        using SKData png = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return png.ToArray();
    }
}
