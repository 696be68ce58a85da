using System.Collections.Immutable;
using CsCheck;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;

namespace MeshSim.Tests.Propagation.Fields;

/// <summary>
/// A random building, a transmitter in, on or outside it, and a grid. Places are multiples of a random module, from the grid's
/// own step (coincidences everywhere) to a tenth of a millimetre (hardly any).
/// </summary>
internal sealed record RandomHome(FloorPlan Plan, Position Transmitter, FieldGrid Grid)
{
    public override string ToString() =>
        $"transmitter {Transmitter}, grid {Grid}, " + string.Join("; ", Plan.Storeys.Select(storey =>
            $"{storey.Name} at {storey.ElevationMetres} ceiling {storey.CeilingMetres} walls [{string.Join(", ", storey.Walls.Select(WordsOf))}]"
            + $" rooms [{string.Join(", ", storey.Rooms.Select(room => string.Join(" ", room.Outline.Corners)))}]"
            + $" stairs [{string.Join(", ", storey.Floor?.Stairwells.Select(stairs => string.Join(" ", stairs.Outline.Corners)) ?? [])}]"
            + $" objects [{string.Join(", ", storey.Objects.Select(item => $"{item.BaseMetres}+{item.HeightMetres} {string.Join(" ", item.Footprint.Corners)}"))}]"));

    private static string WordsOf(Wall wall) => $"{wall.Start}-{wall.End} {wall.Construction} {string.Join("/", wall.Openings.Select(WordsOf))}";

    private static string WordsOf(Opening opening) =>
        FormattableString.Invariant($"{opening.OffsetMetres}+{opening.WidthMetres} {opening.SillMetres}+{opening.HeightMetres}");
}

internal static class RandomHomes
{
    private const int Side = 60_000, GridStep = 5_000;
    private const double StoreyMetres = 2.7, CeilingMetres = 2.4;

    private static readonly int[] Modules = [10_000, 5_000, 2_500, 1_000, 250, 7, 1];
    private static readonly int[] HeightModules = [12_000, 6_000, 3_000, 500, 1];

    /// <summary>Walls, openings, objects and floors of constant loss.</summary>
    public static readonly Gen<RandomHome> Constant = Of(["brick", "stud", "glass"]);

    /// <summary>Walls and floors whose loss depends on the angle, among others.</summary>
    public static readonly Gen<RandomHome> Angled = Of(["layered", "thick", "stud"]);

    /// <summary>Everything that the buildings name.</summary>
    public static ImmutableDictionary<ConstructionName, Construction> Constructions { get; } = new[]
    {
        Stated("brick", 7.3), Stated("stud", 2.49), Stated("glass", 1.0004), Stated("metal", 26), Layered("layered", 0.1), Layered("thick", 0.23),
    }.ToImmutableDictionary(construction => construction.Name);

    private static Construction Stated(string name, double lossDb) => new()
    {
        Name = new(name),
        Description = name,
        Use = ConstructionUse.Wall,
        Stated = [new(new(2440), new(lossDb))],
        Spread = Decibels.Zero,
        Source = "assumed",
    };

    private static Construction Layered(string name, double metres) => new()
    {
        Name = new(name),
        Description = name,
        Use = ConstructionUse.Wall,
        Layers = [new(new Material { Name = "concrete", Edition = "test", A = 5.24, B = 0, C = 0.0462, D = 0.7822, FrequencyGigahertz = new(1, 100, "GHz"), Source = "test" }, metres)],
        Spread = Decibels.Zero,
        Source = "assumed",
    };

    private static Gen<RandomHome> Of(string[] constructions) =>
        from module in AnyOf(Modules)
        from heightModule in AnyOf(HeightModules)
        let coordinate = Gen.Int[0, Side / module].Select(k => k * module)
        let point = Gen.Select(coordinate, coordinate, (x, y) => new PlanPoint(x, y))
        from storeys in Storey(point, AnyOf(constructions).Select(name => new ConstructionName(name)), module).Array[1, 3]
        let plan = new FloorPlan([.. storeys.Select((storey, i) => Lift(storey, i))])
        from transmitter in Transmitter(plan, point, heightModule)
        from gridStorey in Gen.Int[0, storeys.Length - 1]
        from gridHeight in Height(plan, heightModule)
        from sameHeight in Gen.Int[0, 2]
        from shift in Gen.Int[0, 3]
        let z = sameHeight == 0 ? transmitter.Z : gridHeight
        select new RandomHome(plan, transmitter, new(plan.Storeys[gridStorey].Name, new(-GridStep - (shift * 625), -GridStep), GridStep, 15, 16, z));

    private static Gen<T> AnyOf<T>(T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Storey Lift(Storey storey, int index) => storey with
    {
        Name = new(FormattableString.Invariant($"storey {index}")),
        ElevationMetres = index * StoreyMetres,
        Floor = index == 0 ? null : storey.Floor,
    };

    private static Gen<int> Height(FloorPlan plan, int module)
    {
        int top = Lattice.FromMetres(plan.Storeys.Length * StoreyMetres);
        int[] levels = [.. plan.Storeys.SelectMany(storey => new[] { 0, 0.9, 2, CeilingMetres }.Select(metres => Lattice.FromMetres(storey.ElevationMetres + metres)))];
        return Gen.Frequency((3, Gen.Int[-1, top / module].Select(k => k * module)), (1, AnyOf(levels)));
    }

    private static Gen<Position> Transmitter(FloorPlan plan, Gen<PlanPoint> point, int heightModule)
    {
        Wall[] walls = [.. plan.Storeys.SelectMany(storey => storey.Walls)];
        Gen<PlanPoint> anywhere = Gen.Select(Gen.Int[-2 * GridStep, Side + GridStep], Gen.Int[-2 * GridStep, Side + GridStep], (x, y) => new PlanPoint(x, y));
        Gen<PlanPoint> place = walls.Length == 0
            ? point
            : Gen.Frequency(
                (4, point),
                (2, anywhere),
                (1, AnyOf(walls).Select(wall => wall.Start)),
                (1, AnyOf(walls).Select(wall => new PlanPoint((wall.Start.X + wall.End.X) / 2, (wall.Start.Y + wall.End.Y) / 2))),
                (1, AnyOf(walls).Select(wall => new PlanPoint((2 * wall.End.X) - wall.Start.X, (2 * wall.End.Y) - wall.Start.Y))));
        return Gen.Select(place, Height(plan, heightModule), (plan2, z) => new Position(plan2, z));
    }

    private static Gen<Storey> Storey(Gen<PlanPoint> point, Gen<ConstructionName> construction, int module)
    {
        Gen<Polygon> box = Gen.Select(point, point).Where((a, b) => a.X != b.X && a.Y != b.Y).Select((a, b) => Polygon.Rectangle(a, b));
        Gen<Polygon> triangle = Gen.Select(point, point, point)
            .Where((a, b, c) => Predicates.SignedArea(a, b, c) != 0).Select((a, b, c) => new Polygon([a, b, c]));
        Gen<BlockingObject> item = Gen.Select(Gen.OneOf(box, triangle), Gen.Int[0, 3], (outline, kind) => new BlockingObject
        {
            Name = "object",
            Footprint = outline,
            BaseMetres = kind * 0.3,
            HeightMetres = 0.6 * (kind + 1) / 2,
            Construction = new("metal"),
        });
        Gen<Wall[]> walls = Gen.OneOf(Free(point, construction).Array[0, 6], Rooms(construction, module), Chain(point, construction));
        return Gen.Select(walls, Gen.OneOf(box, triangle).Array[0, 3], box.Array[0, 2], item.Array[0, 2], construction, (lines, rooms, stairs, items, floor) => new Storey
        {
            Name = new("storey"),
            ElevationMetres = 0,
            CeilingMetres = CeilingMetres,
            Walls = [.. lines],
            Rooms = [.. rooms.Select((outline, i) => new Room(new(FormattableString.Invariant($"room {i}")), outline))],
            Floor = new(floor, 0.3, [.. stairs.Select(outline => new Stairwell(outline))]),
            Objects = [.. items],
        });
    }

    private static Gen<Wall> Free(Gen<PlanPoint> point, Gen<ConstructionName> construction) =>
        Gen.Select(point, point, construction, Gen.Int[0, 4]).Where((a, b, _, _) => a.DistanceMetresTo(b) >= 1)
            .Select((a, b, name, openings) => Wall(a, b, name, openings));

    // Walls in a row that share ends, some in line: where shadow borders cancel.
    private static Gen<Wall[]> Chain(Gen<PlanPoint> point, Gen<ConstructionName> construction) =>
        Gen.Select(point.Array[3, 6], construction, Gen.Int[0, 4]).Select((points, name, openings) => points.Zip(points.Skip(1))
            .Where(pair => pair.First.DistanceMetresTo(pair.Second) >= 1)
            .Select(pair => Wall(pair.First, pair.Second, name, openings)).ToArray());

    // Four rooms around a cross, walls cut where they meet.
    private static Gen<Wall[]> Rooms(Gen<ConstructionName> construction, int module) =>
        Gen.Select(Gen.Int[2, 5], Gen.Int[2, 5], construction, construction, Gen.Int[0, 4]).Select((x, y, outer, inner, openings) =>
        {
            int step = Math.Max(1, 10_000 / module) * module, across = 6 * step, cutX = x * step, cutY = y * step;
            PlanPoint[] ring = [new(0, 0), new(cutX, 0), new(across, 0), new(across, cutY), new(across, across), new(cutX, across), new(0, across), new(0, cutY), new(0, 0)];
            var centre = new PlanPoint(cutX, cutY);
            IEnumerable<Wall> spokes = new[] { ring[1], ring[3], ring[5], ring[7] }.Select(end => Wall(centre, end, inner, openings));
            return ring.Zip(ring.Skip(1)).Select(pair => Wall(pair.First, pair.Second, outer, 4 - openings)).Concat(spokes).ToArray();
        });

    private static Wall Wall(PlanPoint a, PlanPoint b, ConstructionName name, int openings)
    {
        Opening door = new() { Name = "door", Kind = OpeningKind.Door, OffsetMetres = 0.2, WidthMetres = 0.4, HeightMetres = 2, Construction = new("stud"), IsOpen = openings == 2 };
        Opening window = new() { Name = "window", Kind = OpeningKind.Window, OffsetMetres = 0.6, WidthMetres = 0.35, SillMetres = 0.9, HeightMetres = 1.1, Construction = new("glass") };
        ImmutableArray<Opening> cut = openings switch { 0 => [], 1 or 2 => [door], 3 => [window], _ => [door, window] };
        return new() { Name = "wall", Start = a, End = b, Construction = name, Openings = cut };
    }
}
