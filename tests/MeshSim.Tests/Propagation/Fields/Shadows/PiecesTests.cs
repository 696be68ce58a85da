using MeshSim.Propagation.Fields.Shadows;

namespace MeshSim.Tests.Propagation.Fields.Shadows;

public sealed class PiecesTests
{
    // An interpolating cubic at Chebyshev points errs by at most f⁗ h⁴ / 192 with half a piece h; for the sine over 0 to 8 h is 1/4.
    private const double CubicOfSine = 1.0 / 256 / 192, SinglePrecision = 2e-4;

    [Fact]
    public void Each_piece_keeps_to_the_bound_of_interpolation()
    {
        var pieces = Pieces.Of(Math.Sin, 0, 8, degree: 3);
        for (int i = 0; i < 8000; i++)
            At(pieces, i / 1000.0).Should().BeApproximately(Math.Sin(i / 1000.0), CubicOfSine + (SinglePrecision / 4));
    }

    [Fact]
    public void A_polynomial_of_the_degree_is_met_exactly()
    {
        var pieces = Pieces.Of(x => 3 - (2 * x) + (x * x / 2), 0, 8, degree: 2);
        for (int i = 0; i < 800; i++)
            At(pieces, i / 100.0).Should().BeApproximately(3 - (2 * i / 100.0) + (i / 100.0 * i / 100 / 2), SinglePrecision / 10);
    }

    // Pieces over 0 to 8 have half a unit each.
    private static double At(Pieces pieces, double x)
    {
        int piece = (int)(2 * x);
        double value = 0;
        foreach (float[] ofPower in pieces.Coefficients.Reverse()) value = (value * x) + ofPower[piece];
        return value;
    }
}
