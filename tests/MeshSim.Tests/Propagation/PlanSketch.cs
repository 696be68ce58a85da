using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;

namespace MeshSim.Tests.Propagation;

/// <summary>Short ways to draw small buildings, in metres.</summary>
internal static class PlanSketch
{
    public const double CeilingMetres = 2.4;

    public static readonly ConstructionName Brick = new("brick"), Stud = new("stud"), Oak = new("oak"), Glass = new("glass"), Joists = new("joists"), Metal = new("metal");

    public static PlanPoint Point(double xMetres, double yMetres) => PlanPoint.FromMetres(xMetres, yMetres);

    public static Position At(double xMetres, double yMetres, double zMetres) => new(Point(xMetres, yMetres), Lattice.FromMetres(zMetres));

    public static Wall Wall(string name, PlanPoint start, PlanPoint end, params Opening[] openings) =>
        new() { Name = name, Start = start, End = end, Construction = Brick, Openings = [.. openings] };

    public static Opening Door(string name, double offsetMetres, double widthMetres) =>
        new() { Name = name, Kind = OpeningKind.Door, OffsetMetres = offsetMetres, WidthMetres = widthMetres, HeightMetres = 2, Construction = Oak };

    public static Opening Window(string name, double offsetMetres, double widthMetres, double sillMetres, double heightMetres) => new()
    {
        Name = name,
        Kind = OpeningKind.Window,
        OffsetMetres = offsetMetres,
        WidthMetres = widthMetres,
        SillMetres = sillMetres,
        HeightMetres = heightMetres,
        Construction = Glass,
    };

    public static Storey Storey(params Wall[] walls) =>
        new() { Name = new("ground"), ElevationMetres = 0, CeilingMetres = CeilingMetres, Walls = [.. walls] };

    public static FloorPlan Plan(params Storey[] storeys) => new([.. storeys]);

    public static FloorPlan Plan(params Wall[] walls) => Plan(Storey(walls));

    /// <summary>What a path meets, in words: "name kind weight", in order.</summary>
    public static ImmutableArray<string> Trace(FloorPlan plan, Position from, Position to)
    {
        var tracer = new CrossingTracer(plan);
        var crossings = new List<Crossing>();
        tracer.Trace(from, to, crossings);
        return [.. crossings.Select(crossing => FormattableString.Invariant($"{tracer.NameOf(crossing)} {crossing.Kind} {crossing.Weight}"))];
    }
}
