using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Benchmarks;

/// <summary>What a generated building looks like.</summary>
/// <param name="Name">S, M or L.</param>
/// <param name="WidthMetres">Along x.</param>
/// <param name="DepthMetres">Along y.</param>
/// <param name="Storeys">Number of storeys, all alike in size, each cut in its own way.</param>
/// <param name="Rooms">Rooms of each storey; about three times as many walls.</param>
/// <param name="GridStepMetres">Distance between receivers.</param>
/// <param name="Transmitters">Number of transmitters.</param>
public sealed record BuildingSize(string Name, double WidthMetres, double DepthMetres, int Storeys, int Rooms, double GridStepMetres, int Transmitters)
{
    public static readonly BuildingSize S = new("S", 10, 12, 3, 20, 0.05, 20);
    public static readonly BuildingSize M = new("M", 60, 20, 1, 300, 0.10, 40);
    public static readonly BuildingSize L = new("L", 200, 100, 1, 3333, 0.25, 100);
}

/// <summary>
/// A building cut into rooms by a seeded generator: the largest room is halved across its longer side until there are enough.
/// Walls end where they meet, a quarter of the inner ones have a door, nothing lies on the grid but by chance.
/// </summary>
public sealed class GeneratedBuilding
{
    private const double StoreyMetres = 2.75, CeilingMetres = 2.45;
    /// <summary>Heights at which devices hang.</summary>
    public static readonly double[] HeightsMetres = [0.3, 1.1, 1.9];

    private readonly Random random;
    private readonly int step;
    private int walls;

    /// <summary>Cuts the building into rooms.</summary>
    /// <param name="size">How large.</param>
    /// <param name="isAngled">Whether constructions are of layers.</param>
    /// <param name="seed">Which of them.</param>
    /// <param name="step">Inner walls lie on multiples of this, 0.1 mm. A home folder takes corners that nearly meet for the same one, so one to be written needs 1000.</param>
    public GeneratedBuilding(BuildingSize size, bool isAngled, int seed = 1, int step = 1)
    {
        random = new Random(seed);
        this.step = step;
        Size = size;
        Constructions = Catalogue(isAngled);
        Plan = new([.. Enumerable.Range(0, size.Storeys).Select(MakeStorey)]);
        Transmitters = [.. Enumerable.Range(0, size.Transmitters).Select(_ => Plan.PositionOf(
            Plan.Storeys[random.Next(size.Storeys)].Name,
            PlanPoint.FromMetres(random.NextDouble() * size.WidthMetres, random.NextDouble() * size.DepthMetres),
            HeightsMetres[random.Next(HeightsMetres.Length)]))];
    }

    public BuildingSize Size { get; }

    public FloorPlan Plan { get; }

    public ImmutableDictionary<ConstructionName, Construction> Constructions { get; }

    public ImmutableArray<Position> Transmitters { get; }

    private static ImmutableDictionary<ConstructionName, Construction> Catalogue(bool isAngled) => new[]
    {
        Make("outer", 8.4, 0.25, isAngled), Make("partition", 2.6, 0.025, isAngled), Make("block", 5.2, 0.10, isAngled),
        Make("door", 1.9, 0.04, isAngled), Make("joists", 11, 0.15, isAngled),
    }.ToImmutableDictionary(construction => construction.Name);

    private static Construction Make(string name, double lossDb, double metres, bool isAngled)
    {
        var material = new Material { Name = "concrete", Edition = "P.2040-3", A = 5.24, B = 0, C = 0.0462, D = 0.7822, FrequencyGigahertz = new(1, 100, "GHz"), Source = "ITU-R P.2040-3" };
        return new()
        {
            Name = new(name),
            Description = name,
            Use = ConstructionUse.Wall,
            Layers = isAngled ? [new(material, metres)] : [],
            Stated = isAngled ? [] : [new(new(2440), new(lossDb))],
            Spread = Decibels.Zero,
            Source = "assumed",
        };
    }

    private Storey MakeStorey(int index)
    {
        List<(PlanPoint A, PlanPoint B)> lines = [];
        List<(PlanPoint Low, PlanPoint High)> rooms = Cut(lines);
        return new()
        {
            Name = new(FormattableString.Invariant($"storey {index}")),
            ElevationMetres = index * StoreyMetres,
            CeilingMetres = CeilingMetres,
            Floor = index == 0 ? null : new(new("joists"), StoreyMetres - CeilingMetres, [new(Polygon.Rectangle(PlanPoint.FromMetres(4, 4), PlanPoint.FromMetres(5, 7)))]),
            Rooms = [.. rooms.Select((room, i) => new Room(new(FormattableString.Invariant($"room {index}.{i}")), Polygon.Rectangle(room.Low, room.High)))],
            Walls = [.. Walls(lines)],
        };
    }

    private List<(PlanPoint Low, PlanPoint High)> Cut(List<(PlanPoint A, PlanPoint B)> lines)
    {
        PlanPoint low = new(0, 0), high = PlanPoint.FromMetres(Size.WidthMetres, Size.DepthMetres);
        lines.AddRange([(low, new(high.X, low.Y)), (new(high.X, low.Y), high), (high, new(low.X, high.Y)), (new(low.X, high.Y), low)]);
        var rooms = new PriorityQueue<(PlanPoint Low, PlanPoint High), long>();
        rooms.Enqueue((low, high), 0);
        while (rooms.Count < Size.Rooms)
        {
            (PlanPoint a, PlanPoint b) = rooms.Dequeue();
            double part = 0.35 + (0.3 * random.NextDouble());
            bool isWide = b.X - a.X > b.Y - a.Y;
            int cut = isWide ? a.X + (int)((b.X - a.X) * part) : a.Y + (int)((b.Y - a.Y) * part);
            cut -= cut % step;
            lines.Add(isWide ? (new(cut, a.Y), new(cut, b.Y)) : (new(a.X, cut), new(b.X, cut)));
            Add(a, isWide ? new(cut, b.Y) : new(b.X, cut));
            Add(isWide ? new(cut, a.Y) : new(a.X, cut), b);
        }

        return [.. rooms.UnorderedItems.Select(item => item.Element)];

        void Add(PlanPoint a, PlanPoint b) => rooms.Enqueue((a, b), -((long)b.X - a.X) * ((long)b.Y - a.Y));
    }

    private IEnumerable<Wall> Walls(List<(PlanPoint A, PlanPoint B)> lines)
    {
        ILookup<int, PlanPoint> byX = lines.SelectMany(line => new[] { line.A, line.B }).ToLookup(point => point.X);
        ILookup<int, PlanPoint> byY = lines.SelectMany(line => new[] { line.A, line.B }).ToLookup(point => point.Y);
        for (int line = 0; line < lines.Count; line++)
        {
            (PlanPoint a, PlanPoint b) = lines[line];
            bool isOuter = line < 4;
            IEnumerable<PlanPoint> along = a.X == b.X
                ? byX[a.X].Where(p => Math.Min(a.Y, b.Y) <= p.Y && p.Y <= Math.Max(a.Y, b.Y)).Distinct().OrderBy(p => p.Y)
                : byY[a.Y].Where(p => Math.Min(a.X, b.X) <= p.X && p.X <= Math.Max(a.X, b.X)).Distinct().OrderBy(p => p.X);
            ConstructionName construction = new(isOuter ? "outer" : random.Next(3) == 0 ? "block" : "partition");
            PlanPoint[] joints = [.. along];
            for (int i = 0; i + 1 < joints.Length; i++)
            {
                var wall = new Wall { Name = FormattableString.Invariant($"wall {walls++}"), Start = joints[i], End = joints[i + 1], Construction = construction };
                bool hasDoor = !isOuter && wall.LengthMetres > 1.2 && random.Next(4) == 0;
                yield return hasDoor ? wall with { Openings = [DoorOf(wall)] } : wall;
            }
        }
    }

    private Opening DoorOf(Wall wall) => new()
    {
        Name = wall.Name + " door",
        Kind = OpeningKind.Door,
        OffsetMetres = 0.1 + (random.NextDouble() * (wall.LengthMetres - 1)),
        WidthMetres = 0.8,
        HeightMetres = 2,
        Construction = new("door"),
    };
}
