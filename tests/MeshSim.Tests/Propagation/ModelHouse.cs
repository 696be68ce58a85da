using System.Collections.Immutable;
using CsCheck;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Tests.Materials;

namespace MeshSim.Tests.Propagation;

/// <summary>
/// A house of 8 m by 6 m for the model tests. On each storey an inner wall at x = 4 m with a door at y = 1 to 1.8 m; on the ground
/// floor a cabinet at (6, 4) to (6.6, 4.6). Storeys stand 2.7 m apart with structures of 0.3 m and a stairwell at (0.5, 0.5) to (1.5, 3).
/// </summary>
public static class ModelHouse
{
    public static readonly Frequency Carrier = new(2440);

    public static readonly ImmutableDictionary<ConstructionName, Construction> Constructions = MaterialCatalogue.Constructions;

    /// <summary>A place in the house.</summary>
    public static readonly Gen<Position> Places = Gen.Select(
        Gen.Double[0.01, 7.99], Gen.Double[0.01, 5.99], Gen.Double[0.05, 7.7], (x, y, z) => At(x, y, z));

    public static Position At(double xMetres, double yMetres, double zMetres) =>
        new(PlanPoint.FromMetres(xMetres, yMetres), Lattice.FromMetres(zMetres));

    public static FloorPlan Build(int storeys = 3, string inner = "brick-half", bool doorsOpen = false) =>
        new([.. Enumerable.Range(0, storeys).Select(level => Storey(level, inner, doorsOpen))]);

    public static IPathLossModel Model(ModelName name, FloorPlan plan, double exponent = 2) =>
        PathLossModels.Create(name, plan, Constructions, Carrier, exponent);

    /// <summary>The planning loss of a construction of the catalogue at the carrier, dB.</summary>
    public static double LossDb(string construction, double cosine = 1) =>
        LossCurves.Of(Constructions[new(construction)], Carrier).At(cosine).Value;

    /// <summary>The same house with one more wall on the ground floor.</summary>
    public static FloorPlan WithWall(FloorPlan plan, Wall wall) =>
        new(plan.Storeys.SetItem(0, plan.Storeys[0] with { Walls = plan.Storeys[0].Walls.Add(wall) }));

    /// <summary>The same house with every plan point mapped.</summary>
    public static FloorPlan Map(FloorPlan plan, Func<PlanPoint, PlanPoint> map) => new([.. plan.Storeys.Select(storey => storey with
    {
        Rooms = [.. storey.Rooms.Select(room => room with { Outline = Map(room.Outline, map) })],
        Walls = [.. storey.Walls.Select(wall => wall with { Start = map(wall.Start), End = map(wall.End) })],
        Objects = [.. storey.Objects.Select(item => item with { Footprint = Map(item.Footprint, map) })],
        Floor = storey.Floor is { } floor
            ? floor with { Stairwells = [.. floor.Stairwells.Select(stairwell => new Stairwell(Map(stairwell.Outline, map)))] }
            : null,
    })]);

    public static Wall Wall(double fromX, double fromY, double toX, double toY, string construction, string name = "wall") => new()
    {
        Name = name,
        Start = PlanPoint.FromMetres(fromX, fromY),
        End = PlanPoint.FromMetres(toX, toY),
        Construction = new(construction),
    };

    private static Polygon Map(Polygon outline, Func<PlanPoint, PlanPoint> map) => new([.. outline.Corners.Select(map)]);

    private static Storey Storey(int level, string inner, bool doorsOpen) => new()
    {
        Name = new(FormattableString.Invariant($"storey {level}")),
        ElevationMetres = 2.7 * level,
        CeilingMetres = 2.4,
        Rooms = [new(new(FormattableString.Invariant($"all of {level}")), Rectangle(0, 0, 8, 6))],
        Walls =
        [
            Wall(0, 0, 8, 0, "cavity-brick"),
            Wall(8, 0, 8, 6, "cavity-brick"),
            Wall(8, 6, 0, 6, "cavity-brick"),
            Wall(0, 6, 0, 0, "cavity-brick"),
            Wall(4, 0, 4, 6, inner, "inner wall") with { Openings = [Door(level, doorsOpen)] },
        ],
        Objects = level > 0 ? [] : [new() { Name = "cabinet", Footprint = Rectangle(6, 4, 6.6, 4.6), HeightMetres = 1.8, Construction = new("metal-cabinet") }],
        Floor = level == 0 ? null : new(new("joists-chipboard-plasterboard"), 0.3, [new(Rectangle(0.5, 0.5, 1.5, 3))]),
    };

    private static Opening Door(int level, bool isOpen) => new()
    {
        Name = FormattableString.Invariant($"door {level}"),
        Kind = OpeningKind.Door,
        OffsetMetres = 1,
        WidthMetres = 0.8,
        HeightMetres = 2,
        Construction = new("door-timber"),
        IsOpen = isOpen,
    };

    private static Polygon Rectangle(double fromX, double fromY, double toX, double toY) =>
        Polygon.Rectangle(PlanPoint.FromMetres(fromX, fromY), PlanPoint.FromMetres(toX, toY));
}
