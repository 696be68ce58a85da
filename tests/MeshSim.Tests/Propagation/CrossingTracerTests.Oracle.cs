using CsCheck;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using NetTopologySuite.Geometries;
using Polygon = MeshSim.FloorPlans.Geometry.Polygon;
using Position = MeshSim.FloorPlans.Geometry.Position;

namespace MeshSim.Tests.Propagation;

/// <summary>
/// The tracer against an independent calculation: plan geometry by NetTopologySuite, heights in decimal numbers. Cases that lie
/// within rounding of a tie are left out of the comparison, and the tests check that few are.
/// </summary>
public sealed partial class CrossingTracerTests
{
    // Crossing points are found to a double's last digits at 80,000 steps; a millionth of a step is far above that.
    private const double TieSteps = 1e-6;

    private const int OracleSamples = 2000;

    // Of random fine samples hardly any lies within a millionth of a step of a tie.
    private const int MostSkipped = 20;

    private static readonly GeometryFactory Factory = new();

    [Fact]
    public void Walls_and_openings_agree_with_an_independent_calculation() => Compare(
        LossKind.Wall,
        (plan, from, to) => plan.Storeys.SelectMany(storey => storey.Walls.Select(wall => (storey, wall))).SelectMany(item => WallMet(plan, item.storey, item.wall, from, to)));

    [Fact]
    public void Floors_agree_with_an_independent_calculation() => Compare(LossKind.Floor, (plan, from, to) => FloorMet(plan, from, to));

    [Fact]
    public void Objects_agree_with_an_independent_calculation() => Compare(
        LossKind.Object,
        (plan, from, to) => plan.Storeys.SelectMany(storey => storey.Objects.SelectMany(item => ObjectMet(storey, item, from, to))));

    private static void Compare(LossKind kind, Func<FloorPlan, Position, Position, IEnumerable<string?>> oracle)
    {
        int skipped = 0;
        RandomPlans.Fine.Sample(
            (plan, from, to) =>
            {
                string?[] expected = [.. oracle(plan, from, to)];
                if (expected.Contains(null))
                {
                    Interlocked.Increment(ref skipped);
                    return;
                }

                var tracer = new CrossingTracer(plan);
                var crossings = new List<Crossing>();
                tracer.Trace(from, to, crossings);
                bool isMeant(Crossing c) => kind == LossKind.Wall ? c.Kind is LossKind.Wall or LossKind.Door or LossKind.Window : c.Kind == kind;
                crossings.Where(isMeant).Select(c => tracer.NameOf(c)).Should().BeEquivalentTo(expected);
                crossings.Select(c => c.Weight).Should().AllBeEquivalentTo(1.0);
            },
            iter: OracleSamples);
        skipped.Should().BeLessThanOrEqualTo(MostSkipped);
    }

    /// <summary>The name of what is met in a wall; null where it is a matter of rounding.</summary>
    private static IEnumerable<string?> WallMet(FloorPlan plan, Storey storey, Wall wall, Position from, Position to)
    {
        Coordinate p = CoordinateOf(from.Plan), q = CoordinateOf(to.Plan), a = CoordinateOf(wall.Start), b = CoordinateOf(wall.End);
        var intersector = new NetTopologySuite.Algorithm.RobustLineIntersector();
        intersector.ComputeIntersection(p, q, a, b);
        if (!intersector.HasIntersection) yield break;
        if (!intersector.IsProper)
        {
            yield return null;
            yield break;
        }

        Coordinate met = intersector.GetIntersection(0);
        double heightSteps = HeightAt(met, from, to) - (storey.ElevationMetres * Lattice.StepsPerMetre);
        double alongSteps = a.Distance(met);
        double halfBelowSteps = (storey.Floor?.ThicknessMetres ?? 0) / 2 * Lattice.StepsPerMetre;
        double halfAboveSteps = (plan.Storeys.SkipWhile(s => s != storey).ElementAtOrDefault(1)?.Floor?.ThicknessMetres ?? 0) / 2 * Lattice.StepsPerMetre;
        double topSteps = (storey.CeilingMetres * Lattice.StepsPerMetre) + halfAboveSteps;
        if (IsTie(heightSteps + halfBelowSteps) || IsTie(heightSteps - topSteps))
        {
            yield return null;
            yield break;
        }

        if (heightSteps < -halfBelowSteps || heightSteps >= topSteps) yield break;
        foreach (Opening opening in wall.Openings)
        {
            double near = opening.OffsetMetres * Lattice.StepsPerMetre, far = near + (opening.WidthMetres * Lattice.StepsPerMetre);
            double sill = opening.SillMetres * Lattice.StepsPerMetre, head = sill + (opening.HeightMetres * Lattice.StepsPerMetre);

            // Jambs are rounded to the lattice, by up to a step's diagonal.
            if (Math.Abs(alongSteps - near) < 2 || Math.Abs(alongSteps - far) < 2 || IsTie(heightSteps - sill) || IsTie(heightSteps - head))
            {
                yield return null;
                yield break;
            }

            if (alongSteps < near || alongSteps > far || heightSteps < sill || heightSteps > head) continue;
            if (!opening.IsOpen) yield return opening.Name;
            yield break;
        }

        yield return wall.Name;
    }

    private static IEnumerable<string?> FloorMet(FloorPlan plan, Position from, Position to)
    {
        Storey storey = plan.Storeys[1];
        Room[] rooms = [.. storey.Rooms, .. plan.Storeys[0].Rooms];
        double planeSteps = (storey.ElevationMetres - (storey.Floor!.ThicknessMetres / 2)) * Lattice.StepsPerMetre;
        if (IsTie(from.Z - planeSteps) || IsTie(to.Z - planeSteps)) return [null];
        if (from.Z < planeSteps == to.Z < planeSteps) return [];
        double share = (planeSteps - from.Z) / (to.Z - (double)from.Z);
        var met = Factory.CreatePoint(new Coordinate(
            from.Plan.X + (share * (to.Plan.X - (double)from.Plan.X)), from.Plan.Y + (share * (to.Plan.Y - (double)from.Plan.Y))));
        Polygon[] outlines = [.. rooms.Select(room => room.Outline), .. storey.Floor.Stairwells.Select(stairwell => stairwell.Outline)];
        if (outlines.Any(outline => Shape(outline).ExteriorRing.IsWithinDistance(met, TieSteps))) return [null];
        bool isHole = storey.Floor.Stairwells.Any(stairwell => Shape(stairwell.Outline).Contains(met));
        bool isFloor = storey.Rooms.IsEmpty || plan.Storeys[0].Rooms.IsEmpty || rooms.Any(room => Shape(room.Outline).Contains(met));
        return isFloor && !isHole ? [$"floor of {storey.Name}"] : [];
    }

    private static IEnumerable<string?> ObjectMet(Storey storey, BlockingObject item, Position from, Position to)
    {
        LineString path = Factory.CreateLineString([CoordinateOf(from.Plan), CoordinateOf(to.Plan)]);
        Geometry within = Shape(item.Footprint).Intersection(path);
        double lowSteps = (storey.ElevationMetres + item.BaseMetres) * Lattice.StepsPerMetre, highSteps = lowSteps + (item.HeightMetres * Lattice.StepsPerMetre);
        if (within.IsEmpty) return [];
        double[] heights = [.. within.Coordinates.Select(c => HeightAt(c, from, to))];
        if (within.Length < TieSteps || IsTie(heights.Max() - lowSteps) || IsTie(heights.Min() - highSteps)) return [null];
        return heights.Max() > lowSteps && heights.Min() < highSteps ? [item.Name] : [];
    }

    private static bool IsTie(double differenceSteps) => Math.Abs(differenceSteps) < TieSteps;

    private static double HeightAt(Coordinate met, Position from, Position to) =>
        from.Z + (CoordinateOf(from.Plan).Distance(met) / CoordinateOf(from.Plan).Distance(CoordinateOf(to.Plan)) * (to.Z - (double)from.Z));

    private static Coordinate CoordinateOf(PlanPoint point) => new(point.X, point.Y);

    private static NetTopologySuite.Geometries.Polygon Shape(Polygon outline) =>
        Factory.CreatePolygon([.. outline.Corners.Append(outline.Corners[0]).Select(CoordinateOf)]);
}
