using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation;

/// <summary>
/// An upright rectangle of one construction: what a wall consists of once it is cut at the jambs, sills and heads of its
/// openings. Where an opening stands open there is no panel.
/// </summary>
public readonly record struct WallPanel
{
    /// <summary>One end on the plan.</summary>
    public required PlanPoint Start { get; init; }

    /// <summary>The other end.</summary>
    public required PlanPoint End { get; init; }

    /// <summary>Lower edge, lattice steps above the lowest floor; belongs to the panel.</summary>
    public required int Low { get; init; }

    /// <summary>Upper edge, lattice steps above the lowest floor; does not belong to the panel.</summary>
    public required int High { get; init; }

    /// <summary>The wall that it was cut from, whose direction it has.</summary>
    public required Wall Wall { get; init; }

    /// <summary>The opening that it fills, or null for the wall itself.</summary>
    public Opening? Opening { get; init; }

    /// <summary>What it is built of.</summary>
    public ConstructionName Construction => Opening?.Construction ?? Wall.Construction;

    /// <summary>Wall, door or window.</summary>
    public LossKind Kind => Opening is null ? LossKind.Wall : Opening.Kind == OpeningKind.Door ? LossKind.Door : LossKind.Window;

    /// <summary>
    /// Cuts all walls of a storey into panels, in the order of the walls, each from its start, each from the bottom. They
    /// reach to the middle of the floor structures above and below, so that no path slips through between two storeys.
    /// </summary>
    /// <exception cref="ArgumentException">An opening reaches beyond its wall, into another, or above the ceiling.</exception>
    public static IEnumerable<WallPanel> Of(FloorPlan plan, Storey storey)
    {
        (int low, int high) = plan.ExtentOf(storey);
        return storey.Walls.SelectMany(wall => Cut(storey, new() { Start = wall.Start, End = wall.End, Low = low, High = high, Wall = wall }));
    }

    private static IEnumerable<WallPanel> Cut(Storey storey, WallPanel solid)
    {
        Wall wall = solid.Wall;
        int floor = Lattice.FromMetres(storey.ElevationMetres), ceiling = Lattice.FromMetres(storey.ElevationMetres + storey.CeilingMetres);
        PlanPoint reached = wall.Start;
        double reachedMetres = 0;
        foreach (Opening opening in wall.Openings)
        {
            double endMetres = opening.OffsetMetres + opening.WidthMetres;
            int sill = Lattice.FromMetres(storey.ElevationMetres + opening.SillMetres);
            int head = Lattice.FromMetres(storey.ElevationMetres + opening.SillMetres + opening.HeightMetres);
            if (opening.OffsetMetres < reachedMetres - StepMetres || endMetres > wall.LengthMetres + StepMetres || head > ceiling || sill < floor)
                throw new ArgumentException($"opening \"{opening.Name}\" does not fit into wall \"{wall.Name}\"", nameof(storey));

            PlanPoint near = PointAt(wall, opening.OffsetMetres), far = PointAt(wall, endMetres);
            if (reached != near) yield return solid with { Start = reached, End = near };
            WallPanel full = solid with { Start = near, End = far };
            if (full.Low < sill) yield return full with { High = sill };
            if (sill < head && !opening.IsOpen) yield return full with { Low = sill, High = head, Opening = opening };
            if (head < full.High) yield return full with { Low = head };
            (reached, reachedMetres) = (far, endMetres);
        }

        if (reached != wall.End) yield return solid with { Start = reached };
    }

    // Offsets are sums of decimal numbers, so jambs that should coincide may differ in the last digits; a step is far more.
    private static readonly double StepMetres = Lattice.ToMetres(1);

    /// <summary>
    /// The lattice point on the centre line of a wall at a distance from its start. Rounded by displacement, away from zero,
    /// so that a moved, turned or mirrored wall is cut in the moved, turned or mirrored place.
    /// </summary>
    private static PlanPoint PointAt(Wall wall, double offsetMetres)
    {
        double share = Math.Clamp(offsetMetres / wall.LengthMetres, 0, 1);
        return new(
            wall.Start.X + (int)Math.Round(share * ((double)wall.End.X - wall.Start.X), MidpointRounding.AwayFromZero),
            wall.Start.Y + (int)Math.Round(share * ((double)wall.End.Y - wall.Start.Y), MidpointRounding.AwayFromZero));
    }
}
