using System.Globalization;
using CsCheck;
using MeshSim.Files.Importing.Svg;
using SkiaSharp;

namespace MeshSim.Files.Tests.Importing.Svg;

/// <summary>Against the matrices of an independent drawing library.</summary>
public sealed class SvgTransformsTests
{
    // That library holds single precision: seven digits of figures up to some ten thousand.
    private const double Tolerance = 0.05;

    private static readonly Gen<double> Small = Gen.Double[-3, 3].Where(number => Math.Abs(number) > 0.05);
    private static readonly Gen<(string Text, SKMatrix Matrix)> One = Gen.OneOf(
        Gen.Select(Small, Small, Small, Small, Gen.Double[-50, 50], Gen.Double[-50, 50], (a, b, c, d, e, f) =>
            (Text($"matrix({a} {b},{c} {d} {e},{f})"), new SKMatrix((float)a, (float)c, (float)e, (float)b, (float)d, (float)f, 0, 0, 1))),
        Gen.Select(Gen.Double[-80, 80], Gen.Double[-80, 80], (x, y) => (Text($"translate({x},{y})"), SKMatrix.CreateTranslation((float)x, (float)y))),
        Gen.Double[-80, 80].Select(x => (Text($"translate({x})"), SKMatrix.CreateTranslation((float)x, 0))),
        Gen.Select(Small, Small, (x, y) => (Text($"scale({x} {y})"), SKMatrix.CreateScale((float)x, (float)y))),
        Small.Select(x => (Text($" scale ( {x} )"), SKMatrix.CreateScale((float)x, (float)x))),
        Gen.Double[-400, 400].Select(a => (Text($"rotate({a})"), SKMatrix.CreateRotationDegrees((float)a))),
        Gen.Select(Gen.Double[-400, 400], Gen.Double[-20, 20], Gen.Double[-20, 20], (a, x, y) =>
            (Text($"rotate({a},{x},{y})"), SKMatrix.CreateRotationDegrees((float)a, (float)x, (float)y))),
        Gen.Double[-60, 60].Select(a => (Text($"skewX({a})"), SKMatrix.CreateSkew((float)Math.Tan(a * Math.PI / 180), 0))),
        Gen.Double[-60, 60].Select(a => (Text($"skewY({a})"), SKMatrix.CreateSkew(0, (float)Math.Tan(a * Math.PI / 180)))));

    [Fact]
    public void A_list_of_functions_moves_places_as_the_independent_matrices_do() =>
        Gen.Select(One.Array[1, 4], Gen.Double[-100, 100], Gen.Double[-100, 100]).Sample((list, x, y) =>
        {
            Affine? map = SvgTransforms.Parse(string.Join(" , ", list.Select(one => one.Text)));
            SKMatrix matrix = list.Aggregate(SKMatrix.Identity, (all, one) => SKMatrix.Concat(all, one.Matrix));

            SvgPoint moved = map!.Value.Of(new(x, y));
            SKPoint expected = matrix.MapPoint((float)x, (float)y);

            moved.X.Should().BeApproximately(expected.X, Tolerance);
            moved.Y.Should().BeApproximately(expected.Y, Tolerance);
        });

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    public void Nothing_moves_nothing(string text) => SvgTransforms.Parse(text).Should().Be(Affine.Identity);

    [Theory]
    [InlineData("rotate(")]
    [InlineData("rotate(1 2)")]
    [InlineData("translate(a)")]
    [InlineData("spin(3)")]
    [InlineData("scale(1e400)")]
    [InlineData("matrix(1 0 0 1 0)")]
    [InlineData("scale(2) junk")]
    public void What_makes_no_sense_is_refused(string text) => SvgTransforms.Parse(text).Should().BeNull();

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
