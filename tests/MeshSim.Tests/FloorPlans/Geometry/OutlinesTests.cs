using CsCheck;
using MeshSim.FloorPlans.Geometry;
using NetTopologySuite.Geometries;

namespace MeshSim.Tests.FloorPlans.Geometry;

public sealed class OutlinesTests
{
    private static readonly GeometryFactory Factory = new();

    [Fact]
    public void An_outline_crosses_itself_exactly_when_its_ring_is_not_simple() =>
        Gen.Select(Gen.Int[0, 6], Gen.Int[0, 6], (x, y) => new PlanPoint(x, y)).Array[3, 8].Sample(
            corners =>
            {
                if (corners.Where((corner, i) => corner == corners[(i + 1) % corners.Length]).Any()) return;
                bool isSimple = Factory.CreateLinearRing([.. corners.Append(corners[0]).Select(c => new Coordinate(c.X, c.Y))]).IsSimple;

                (Outlines.FirstSelfCrossing(corners) is null).Should().Be(isSimple);
            },
            iter: 5000);
}
