using CsCheck;
using MeshSim.Files.Importing.Svg;

namespace MeshSim.Files.Tests.Importing.Svg;

public sealed class SubpathTests
{
    private static readonly Gen<SvgPoint> Place = Gen.Select(Gen.Double[-100, 100], Gen.Double[-100, 100], (x, y) => new SvgPoint(x, y));

    [Fact]
    public void Corners_never_leave_the_curve_by_more_than_the_tolerance() =>
        Gen.Select(Place, Place, Place, Place, Gen.Double[0.01, 5]).Sample((a, b, c, d, tolerance) =>
        {
            var corners = new Subpath(a, [new(b, c, d, false)], false).Flattened(tolerance);

            int shares = corners.Length - 1;
            for (int i = 0; i < shares; i++)
            {
                // Between two corners the parameter runs evenly on both, so that equal parameters belong together.
                for (int k = 1; k < 8; k++)
                {
                    double t = (i + (k / 8.0)) / shares, u = 1 - t;
                    SvgPoint on = (u * u * u * a) + (3 * u * u * t * b) + (3 * u * t * t * c) + (t * t * t * d);
                    SvgPoint chord = ((1 - (k / 8.0)) * corners[i]) + (k / 8.0 * corners[i + 1]);
                    (on - chord).Length.Should().BeLessThanOrEqualTo(tolerance * (1 + 1e-9));
                }
            }
        });

    [Fact]
    public void A_straight_step_stays_one() =>
        Subpath.Through([new(0, 0), new(5, 1)], isClosed: false).Flattened(0.001).Should().Equal(new SvgPoint(0, 0), new SvgPoint(5, 1));
}
