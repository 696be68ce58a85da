using MeshSim.Files.Importing.Lines;
using MeshSim.Files.Importing.Mappings;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;
using MeshSim.Materials;

namespace MeshSim.Files.Importing;

/// <summary>Finds the wall that a drawn door or window sits in, and how far along.</summary>
/// <param name="walls">The walls of the storey, each between two joints.</param>
/// <param name="mapping">What the constructions are.</param>
/// <param name="snapMetres">What lies nearer was meant to meet, m.</param>
/// <param name="findings">Takes what is to be said.</param>
internal sealed class OpeningFitting(IReadOnlyList<Wall> walls, ImportMapping mapping, double snapMetres, ImportFindings findings)
{
    /// <summary>Usual measures where the mapping has none, m. Common practice, no source.</summary>
    public const double DoorHeightMetres = 2, WindowHeightMetres = 1.2, WindowSillMetres = 0.9;

    /// <summary>What is narrower is no opening, m: a line across the wall, not along it.</summary>
    private const double NarrowestMetres = 0.15;

    /// <summary>Half of the thickness of a wall whose layers are not known, m. Assumed.</summary>
    private const double UsualHalfMetres = 0.15;

    /// <summary>The opening; null when no wall is near, which is said.</summary>
    public OpeningDescription? Fit(TakenShape taken)
    {
        (Wall Wall, double From, double To, double Beyond)? best = null;
        foreach (Wall wall in walls)
        {
            if (ExtentOn(wall, taken.Shape) is not var (from, to, beyond)) continue;
            if (best is not { } other || to - from > other.To - other.From + 1e-9) best = (wall, from, to, beyond);
        }

        if (best is not var (found, start, end, outside) || end - start < NarrowestMetres)
        {
            findings.Leave(taken.Shape, "no wall runs along it");
            return null;
        }

        if (outside > 2 * snapMetres)
            findings.Problems.Notice(
                taken.Shape.Place, FormattableString.Invariant($"{taken.Shape.What} reaches {outside:0.###} m beyond the wall {found.Name}"), "it is cut where another wall meets that one");
        return Describe(taken, found, start, end - start);
    }

    private OpeningDescription Describe(TakenShape taken, Wall wall, double offsetMetres, double widthMetres)
    {
        bool isDoor = taken.Rule.Meaning == Meaning.Door;
        double usualMetres = isDoor ? DoorHeightMetres : WindowHeightMetres;
        if (taken.Rule.HeightMetres is null) findings.Remark($"{(isDoor ? "doors" : "windows")} without a stated height are taken to be {usualMetres} m high");
        if (!isDoor && taken.Rule.SillMetres is null) findings.Remark($"windows without a stated sill are taken to begin {WindowSillMetres} m above the floor");

        // An offset counts from the left end, or the lower end of an upright wall.
        bool startsLeft = wall.Start.X < wall.End.X || (wall.Start.X == wall.End.X && wall.Start.Y < wall.End.Y);
        return new()
        {
            Source = findings.KeyOf(taken.Shape.Place),
            Name = findings.NameFor("opening", taken.Name, isDoor ? "door" : "window"),
            Kind = isDoor ? OpeningKind.Door : OpeningKind.Window,
            Place = new WallPlace.Line(wall.Start, wall.End),
            OffsetMetres = Rounded(startsLeft ? offsetMetres : wall.LengthMetres - offsetMetres - widthMetres),
            WidthMetres = Rounded(widthMetres),
            SillMetres = taken.Rule.SillMetres ?? (isDoor ? 0 : WindowSillMetres),
            HeightMetres = taken.Rule.HeightMetres ?? usualMetres,
            Construction = taken.Rule.Construction!.Value,
            IsOpen = taken.Rule.IsOpen,
        };
    }

    // To the lattice: the digits beyond it come from turning the drawing's units into metres.
    private static double Rounded(double metres) => Math.Max(0, Math.Round(metres, 4));

    private (double From, double To, double Beyond)? ExtentOn(Wall wall, DrawnShape shape)
    {
        WallStretch line = new(
            new(wall.Start.XMetres, wall.Start.YMetres), new(wall.End.XMetres, wall.End.YMetres), new() { Place = shape.Place, Meaning = Meaning.Wall }, shape);
        double layers = mapping.Constructions.TryGetValue(wall.Construction, out Construction? construction) ? construction.Layers.Sum(layer => layer.ThicknessMetres) : 0;
        double reach = (layers > 0 ? layers / 2 : UsualHalfMetres) + (2 * snapMetres);
        double[] along = [.. shape.Points.Where(point => Math.Abs(line.Across(point)) <= reach).Select(line.Along)];
        if (along.Length < 2) return null;
        double low = along.Min(), high = along.Max(), from = Math.Clamp(low, 0, line.LengthMetres), to = Math.Clamp(high, 0, line.LengthMetres);
        return (from, to, Math.Max(from - low, high - to));
    }
}
