using CsCheck;
using MeshSim.FloorPlans.Geometry;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;

namespace MeshSim.Tests.FloorPlans.Geometry;

public sealed class PredicatesTests
{
    private const long Samples = 5000;

    private static readonly Gen<PlanPoint> Near = Gen.Select(Gen.Int[0, 5], Gen.Int[0, 5], (x, y) => new PlanPoint(x, y));

    private static readonly Gen<PlanPoint> Far = Gen.Select(Gen.Int[-10_000_000, 10_000_000], Gen.Int[-10_000_000, 10_000_000], (x, y) => new PlanPoint(x, y));

    [Fact]
    public void Sides_agree_with_exact_arithmetic_at_the_edge_of_the_lattice() => Gen.Select(Far, Far, Far).Sample(
        (a, b, p) =>
        {
            Int128 area = (((Int128)b.X - a.X) * ((Int128)p.Y - a.Y)) - (((Int128)b.Y - a.Y) * ((Int128)p.X - a.X));
            Predicates.SideOf(a, b, p).Should().Be((Side)Int128.Sign(area));
        },
        iter: Samples);

    [Fact]
    public void Stretches_touch_and_cross_as_an_independent_calculation_says() => Gen.Select(Near, Near, Near, Near).Sample(
        (a, b, c, d) =>
        {
            if (a == b || c == d) return;
            var intersector = new RobustLineIntersector();
            intersector.ComputeIntersection(At(a), At(b), At(c), At(d));

            Predicates.Touch(a, b, c, d).Should().Be(intersector.HasIntersection);
            Predicates.Cross(a, b, c, d).Should().Be(intersector.HasIntersection && intersector.IsProper);
        },
        iter: Samples);

    [Fact]
    public void A_point_is_on_a_stretch_as_an_independent_calculation_says() => Gen.Select(Near, Near, Near).Sample(
        (a, b, p) =>
        {
            var intersector = new RobustLineIntersector();
            intersector.ComputeIntersection(At(p), At(a), At(b));

            Predicates.IsOn(a, b, p).Should().Be(intersector.HasIntersection);
        },
        iter: Samples);

    private static Coordinate At(PlanPoint point) => new(point.X, point.Y);
}
