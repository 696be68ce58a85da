using CsCheck;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using static MeshSim.Tests.Propagation.PlanSketch;

namespace MeshSim.Tests.Propagation;

/// <summary>Random two-storey buildings. On the coarse grid ties are the rule; on the fine one they hardly occur.</summary>
internal static class RandomPlans
{
    private const int CoarseSteps = 8, FineSteps = 80_000;

    /// <summary>Everything at whole metres (0 to 8) and half metres of height: paths along walls, through ends, on jambs.</summary>
    public static readonly Gen<(FloorPlan Plan, Position From, Position To)> Coarse = Of(CoarseSteps, Lattice.StepsPerMetre);

    /// <summary>Everything anywhere on the lattice within 8 m.</summary>
    public static readonly Gen<(FloorPlan Plan, Position From, Position To)> Fine = Of(FineSteps, 1);

    private static Gen<(FloorPlan Plan, Position From, Position To)> Of(int steps, int scale)
    {
        Gen<PlanPoint> point = Gen.Select(Gen.Int[0, steps], Gen.Int[0, steps], (x, y) => new PlanPoint(x * scale, y * scale));
        Gen<Position> position = Gen.Select(point, Gen.Int[0, 5 * FineSteps / 8 / Math.Max(1, scale / 2)], (plan, z) => new Position(plan, z * Math.Max(1, scale / 2)));
        Gen<Storey> storey = Gen.Select(Walls(point).Array[0, 6], Boxes(point).Array[0, 2], Boxes(point).Array[0, 2], Boxes(point).Array[0, 2], Floored);
        return Gen.Select(storey, storey, position, position, (ground, upper, from, to) => (
            Plan(ground with { Floor = null, Rooms = [] }, upper with { Name = new("first"), ElevationMetres = 2.7 }), from, to));
    }

    private static Storey Floored(Wall[] walls, Polygon[] rooms, Polygon[] stairwells, Polygon[] objects) => Storey(walls) with
    {
        Floor = new(Joists, 0.3, [.. stairwells.Select(outline => new Stairwell(outline))]),
        Rooms = [.. rooms.Select((outline, i) => new Room(new(FormattableString.Invariant($"room {i}")), outline))],
        Objects =
        [
            .. objects.Select(
                (outline, i) => new BlockingObject
                {
                    Name = FormattableString.Invariant($"object {i}"),
                    Footprint = outline,
                    BaseMetres = 0.5,
                    HeightMetres = 1,
                    Construction = Metal,
                }),
        ],
    };

    private static Gen<Polygon> Boxes(Gen<PlanPoint> point) =>
        Gen.Select(point, point).Where((a, b) => a.X != b.X && a.Y != b.Y).Select((a, b) => Polygon.Rectangle(a, b));

    private static Gen<Wall> Walls(Gen<PlanPoint> point) =>
        Gen.Select(point, point, Gen.Int[0, 3], Gen.Bool).Where((a, b, _, _) => a.DistanceMetresTo(b) >= 1).Select((a, b, openings, isOpen) => Wall(
            "wall",
            a,
            b,
            openings switch
            {
                0 => [],
                1 => [Door("door", 0, 0.5) with { IsOpen = isOpen }],
                2 => [Window("window", a.DistanceMetresTo(b) / 4, a.DistanceMetresTo(b) / 2, 1, 1)],
                _ => [Door("door", 0.25, 0.25) with { IsOpen = isOpen }, Window("window", 0.5, 0.5, 0.5, 1.5)],
            }));
}
