using System.Collections.Immutable;
using CsCheck;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;
using MeshSim.FloorPlans.Geometry;
using NetTopologySuite.Geometries;
using static MeshSim.Tests.FloorPlans.Descriptions.StoreySketch;
using Polygon = MeshSim.FloorPlans.Geometry.Polygon;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace MeshSim.Tests.FloorPlans.Descriptions;

/// <summary>Walls from rooms on random partitions, against NetTopologySuite and against bookkeeping.</summary>
public sealed class WallDerivationTests
{
    private const long Samples = 300;

    // Up to 2 cm for every edge of every room: two neighbours differ by at most 4 cm, less than the snapping tolerance.
    private static readonly Gen<int[]> Errors = Gen.Int[-200, 200].Array[400];

    // Every edge of a turned plan is rounded to the lattice at both ends by up to a step's diagonal, and so is its neighbour's.
    private const double TurnedLengthToleranceMetres = 4 * 1.5 / Lattice.StepsPerMetre;

    // Sums of some fifty lengths.
    private const double LengthToleranceMetres = 1e-9;

    // What may be left over when two dividings of the same lines are compared, in lattice steps.
    private const double LeftOverSteps = 1e-3;

    [Fact]
    public void Rooms_keep_their_area_and_together_cover_the_whole() => RandomPartitions.Any.Sample(
        description =>
        {
            Storey storey = Sound(description);
            for (int i = 0; i < storey.Rooms.Length; i++)
                storey.Rooms[i].Outline.TwiceSignedArea.Should().Be(Int128.Abs(new Polygon(description.Rooms[i].Corners).TwiceSignedArea));
            storey.Rooms.Sum(room => room.Outline.AreaSquareMetres).Should().Be(144);
        },
        iter: Samples);

    [Fact]
    public void Each_inner_edge_gives_one_wall_and_each_outer_edge_one_wall() => RandomPartitions.Any.Sample(
        description =>
        {
            Storey storey = Sound(description);
            double perimeters = description.Rooms.SelectMany(room => new Polygon(room.Corners).Edges).Sum(edge => edge.Start.DistanceMetresTo(edge.End));
            double inner = storey.Walls.Where(wall => wall.Rooms.Length == 2).Sum(wall => wall.LengthMetres);
            double outer = storey.Walls.Where(wall => wall.Rooms.Length == 1).Sum(wall => wall.LengthMetres);

            outer.Should().BeApproximately(48, LengthToleranceMetres);
            ((2 * inner) + outer).Should().BeApproximately(perimeters, LengthToleranceMetres);
            storey.Walls.Should().OnlyContain(wall => wall.Construction == (wall.Rooms.Length == 2 ? Inner : Outer));
        },
        iter: Samples);

    [Fact]
    public void The_walls_are_the_union_of_all_room_edges_and_no_two_overlap() => RandomPartitions.Any.Sample(
        description =>
        {
            Storey storey = Sound(description);
            Shape edges = NetTopologySuite.Operation.Union.UnaryUnionOp.Union(
                description.Rooms.Select(room => RandomPartitions.GeometryOf(new(room.Corners)).Boundary));
            Shape walls = NetTopologySuite.Operation.Union.UnaryUnionOp.Union(storey.Walls.Select(LineOf));

            walls.SymmetricDifference(edges).Length.Should().BeLessThan(LeftOverSteps);
            storey.Walls.Sum(wall => LineOf(wall).Length).Should().BeApproximately(walls.Length, LeftOverSteps);
        },
        iter: Samples);

    [Fact]
    public void Every_end_of_a_wall_is_a_corner_or_a_joint() => RandomPartitions.Any.Sample(
        description =>
        {
            Storey storey = Sound(description);
            foreach (Wall wall in storey.Walls)
            {
                Wall[] meeting = [.. storey.Walls.Where(other => other.Start == wall.End || other.End == wall.End)];
                meeting.Length.Should().BeGreaterThan(1);
                if (meeting.Length > 2) continue;
                Wall next = meeting.Single(other => other != wall);
                Predicates.SideOf(wall.Start, wall.End, next.Start == wall.End ? next.End : next.Start).Should().NotBe(Side.On);
            }
        },
        iter: Samples);

    [Fact]
    public void A_plan_measured_two_centimetres_off_everywhere_gives_the_same_walls() => Gen.Select(RandomPartitions.Any, Errors).Sample(
        (description, errors) =>
        {
            string[] names = NamesAndCounts(Sound(description));
            int next = 0;
            int error() => errors[next++ % errors.Length];
            StoreyDescription measured = WithCorners(description, corners => Shifted(corners, error));

            NamesAndCounts(Sound(measured)).Should().Equal(names);
        },
        iter: Samples);

    [Fact]
    public void A_turned_plan_gives_the_same_walls() => Gen.Select(RandomPartitions.Any, Gen.Double[0, 360]).Sample(
        (description, degrees) =>
        {
            Storey straight = Sound(description);
            (double sine, double cosine) = Math.SinCos(degrees * Math.PI / 180);
            PlanPoint turn(PlanPoint p) =>
                PlanPoint.FromMetres((p.XMetres * cosine) - (p.YMetres * sine), (p.XMetres * sine) + (p.YMetres * cosine));
            Storey turned = Sound(WithCorners(description, corners => [.. corners.Select(turn)]));

            Dictionary<string, double> expected = LengthsByRooms(straight), actual = LengthsByRooms(turned);
            actual.Keys.Should().BeEquivalentTo(expected.Keys);
            foreach ((string rooms, double lengthMetres) in expected)
                actual[rooms].Should().BeApproximately(lengthMetres, straight.Walls.Length * TurnedLengthToleranceMetres);
        },
        iter: Samples);

    private static StoreyDescription WithCorners(
        StoreyDescription description, Func<ImmutableArray<PlanPoint>, ImmutableArray<PlanPoint>> change) =>
        description with { Rooms = [.. description.Rooms.Select(room => room with { Corners = change(room.Corners) })] };

    private static Dictionary<string, double> LengthsByRooms(Storey storey) => storey.Walls
        .GroupBy(wall => string.Join(" | ", wall.Rooms))
        .ToDictionary(group => group.Key, group => group.Sum(wall => wall.LengthMetres));

    private static string[] NamesAndCounts(Storey storey) =>
        [.. storey.Walls.GroupBy(wall => wall.Name).Select(group => FormattableString.Invariant($"{group.Key} {group.Count()}")).Order(StringComparer.Ordinal)];

    private static LineString LineOf(Wall wall) =>
        new([new Coordinate(wall.Start.X, wall.Start.Y), new Coordinate(wall.End.X, wall.End.Y)]);

    /// <summary>Moves every edge of an upright outline across its direction by an error of its own.</summary>
    private static ImmutableArray<PlanPoint> Shifted(ImmutableArray<PlanPoint> corners, Func<int> error)
    {
        PlanPoint[] shifted = [.. corners];
        for (int i = 0; i < shifted.Length; i++)
        {
            int j = (i + 1) % shifted.Length, by = error();
            bool isUpright = corners[i].X == corners[j].X;
            foreach (int corner in (int[])[i, j])
                shifted[corner] = isUpright
                    ? shifted[corner] with { X = corners[i].X + by }
                    : shifted[corner] with { Y = corners[i].Y + by };
        }

        return [.. shifted];
    }
}
