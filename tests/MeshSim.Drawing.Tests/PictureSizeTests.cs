namespace MeshSim.Drawing.Tests;

public sealed class PictureSizeTests
{
    [Theory]
    [InlineData(999)]
    [InlineData(8001)]
    public void A_width_outside_the_range_is_refused(int widthPixels)
    {
        Action make = () => PictureSize.OfWidth(widthPixels);

        make.Should().Throw<ArgumentOutOfRangeException>().WithMessage("*1000 to 8000 pixels*");
    }

    [Theory]
    [InlineData(4.9)]
    [InlineData(1001)]
    [InlineData(double.NaN)]
    public void A_scale_outside_the_range_is_refused(double pixelsPerMetre)
    {
        Action make = () => PictureSize.OfScale(pixelsPerMetre);

        make.Should().Throw<ArgumentOutOfRangeException>().WithMessage("*5 to 1000 pixels per metre*");
    }

    [Fact]
    public void The_default_fills_a_laptop() => PictureSize.Default.Width.Should().Be(1600);
}
