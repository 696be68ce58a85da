using CsCheck;
using MeshSim.FloorPlans.Geometry;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;
using Location = MeshSim.FloorPlans.Geometry.Location;
using Polygon = MeshSim.FloorPlans.Geometry.Polygon;

namespace MeshSim.Tests.FloorPlans.Geometry;

public sealed class PolygonTests
{
    private static readonly Polygon Hook = new([new(0, 0), new(4, 0), new(4, 4), new(2, 2), new(0, 4)]);

    [Theory]
    [InlineData(1, 1, Location.Inside)]
    [InlineData(2, 2, Location.OnOutline)]
    [InlineData(0, 4, Location.OnOutline)]
    [InlineData(2, 0, Location.OnOutline)]
    [InlineData(2, 3, Location.Outside)]
    [InlineData(2, 4, Location.Outside)]
    [InlineData(-1, 0, Location.Outside)]
    [InlineData(5, 4, Location.Outside)]
    public void Locate_tells_inside_from_outline_from_outside(int x, int y, Location location)
    {
        Hook.Locate(PathPoint.At(new(x, y))).Should().Be(location);
        new Polygon([.. Hook.Corners.Reverse()]).Locate(PathPoint.At(new(x, y))).Should().Be(location);
        Hook.Contains(new(x, y)).Should().Be(location != Location.Outside);
    }

    [Fact]
    public void Locate_agrees_with_an_independent_ray_count_on_random_rings() =>
        Gen.Select(Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9]).Array[3, 8], Gen.Int[-1, 10], Gen.Int[-1, 10]).Sample(
            (corners, x, y) =>
            {
                var polygon = new Polygon([.. corners.Select(c => new PlanPoint(c.Item1, c.Item2))]);
                Coordinate[] ring = [.. polygon.Corners.Append(polygon.Corners[0]).Select(c => new Coordinate(c.X, c.Y))];
                Location expected = PointLocation.LocateInRing(new Coordinate(x, y), ring) switch
                {
                    NetTopologySuite.Geometries.Location.Interior => Location.Inside,
                    NetTopologySuite.Geometries.Location.Boundary => Location.OnOutline,
                    _ => Location.Outside,
                };

                polygon.Locate(PathPoint.At(new(x, y))).Should().Be(expected);
            },
            iter: 5000);

    [Fact]
    public void A_point_between_lattice_points_is_located_exactly()
    {
        // One third along from (0, 0) to (2, 1): x = 2/3, y = 1/3, on the line to (4, 2) and a hair off the line to (1000, 499).
        var third = new PathPoint(new(new(0, 0), 0), new(new(2, 1), 0), 1, 3);

        new Polygon([new(0, 0), new(4, 2), new(0, 4)]).Locate(third).Should().Be(Location.OnOutline);
        new Polygon([new(0, 0), new(1000, 499), new(0, 4)]).Locate(third).Should().Be(Location.Inside);
        new Polygon([new(0, 0), new(1000, 501), new(0, 4)]).Locate(third).Should().Be(Location.Outside);
    }

    [Fact]
    public void Convex_means_no_bend_inwards()
    {
        Hook.IsConvex.Should().BeFalse();
        Polygon.Rectangle(new(0, 0), new(3, 2)).IsConvex.Should().BeTrue();
        new Polygon([new(0, 0), new(0, 2), new(1, 2), new(3, 2), new(3, 0)]).IsConvex.Should().BeTrue();
        new Polygon([new(0, 0), new(1, 1), new(2, 2)]).IsConvex.Should().BeFalse();
    }
}
