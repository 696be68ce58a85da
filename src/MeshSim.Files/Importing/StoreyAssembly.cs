using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Importing.Lines;
using MeshSim.Files.Importing.Mappings;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Importing;

/// <summary>Makes storeys of sorted shapes.</summary>
/// <param name="mapping">What the mapping says.</param>
/// <param name="options">How the drawing is to be taken.</param>
/// <param name="findings">Takes what is to be said.</param>
internal sealed class StoreyAssembly(ImportMapping mapping, ImportOptions options, ImportFindings findings)
{
    /// <summary>Clear height and height of an object where nothing is said, m. Common practice, no source.</summary>
    public const double UsualCeilingMetres = 2.4, UsualObjectMetres = 2;

    private Storey? below;

    /// <summary>The next storey upwards; null with an error when it has neither walls nor rooms.</summary>
    public Storey? Add(SortedShapes shapes)
    {
        StoreyName name = new(shapes.Storey.Name);
        WallTaking walls = new(shapes, options, findings);
        List<WallPart> parts = walls.Parts();
        StoreyDescription description = Describe(shapes, name, walls.Rooms(parts), parts);
        if (description.Rooms.IsEmpty && parts.Count == 0)
        {
            findings.Problems.Error(
                shapes.Storey.Place,
                $"the storey {KnownNames.Quote(name.Value)} has neither walls nor rooms",
                "see what was left out, and say in a mapping file what its shapes are");
            return null;
        }

        // Openings are fitted to the walls as they come out, each between two joints.
        ImmutableArray<Wall> bare = StoreyBuilder.Build(description).Storey.Walls;
        OpeningFitting fitting = new(bare, mapping, options.SnapMetres, findings);
        ImmutableArray<OpeningDescription> openings =
            [.. shapes.Taken.Where(taken => taken.Rule.Meaning is Meaning.Door or Meaning.Window).Select(fitting.Fit).OfType<OpeningDescription>()];
        foreach (IGrouping<(OpeningKind Kind, ConstructionName Of), OpeningDescription> group in openings.GroupBy(opening => (opening.Kind, opening.Construction)))
            findings.Take(name, group.Key.Kind == OpeningKind.Door ? "doors" : "windows", group.Key.Of.Value, group.Count());
        return below = Built(description with { Openings = openings });
    }

    private Storey Built(StoreyDescription description)
    {
        StoreyBuilt built = StoreyBuilder.Build(description);
        foreach (FloorPlanProblem problem in built.Problems) findings.Problems.Error(findings.PlaceOf(problem.Source), problem.Wrong, problem.Right);
        foreach (FloorPlanNotice notice in built.Notices) findings.Problems.Notice(findings.PlaceOf(notice.Source), notice.Text, "");
        return built.Storey;
    }

    private StoreyDescription Describe(SortedShapes shapes, StoreyName name, ImmutableArray<RoomDescription> rooms, List<WallPart> parts)
    {
        StoreyRule rule = shapes.Storey;
        if (rule.CeilingMetres is null) findings.Remark($"storey {name}: the ceiling is taken to be {UsualCeilingMetres} m high");
        FloorDescription? floor = FloorOf(shapes);
        return new()
        {
            Source = findings.KeyOf(rule.Place),
            Name = name,
            ElevationMetres = below is null ? 0 : below.ElevationMetres + below.CeilingMetres + (floor?.ThicknessMetres ?? 0),
            CeilingMetres = rule.CeilingMetres ?? UsualCeilingMetres,
            Outer = rule.Outer,
            Inner = rule.Inner,
            NorthDegrees = mapping.NorthDegrees,
            Floor = floor,
            Rooms = rooms,
            Walls = [.. parts.Select(part => new WallDescription(findings.KeyOf(part.Wall.Shape.Place), new WallPlace.Line(part.Start, part.End), part.Wall.Rule.Construction!.Value))],
            Objects = [.. shapes.Of(Meaning.Object).Select(taken => ObjectOf(taken, name)).OfType<ObjectDescription>()],
        };
    }

    private FloorDescription? FloorOf(SortedShapes shapes)
    {
        StoreyRule rule = shapes.Storey;
        ImmutableArray<StairwellDescription> holes = [.. shapes.Of(Meaning.Stairwell).Select(HoleOf).OfType<StairwellDescription>()];
        if (below is null)
        {
            if (rule.Floor is not null || rule.StructureMetres is not null || holes.Length > 0)
                findings.Problems.Error(rule.Place, "the lowest storey has neither floor nor stairwells", "draw a stairwell on the storey above it; nothing below the lowest one is planned");
            return null;
        }

        if (rule is { Floor: { } floor, StructureMetres: { } thickness }) return new(findings.KeyOf(rule.Place), floor, thickness, holes);
        findings.Problems.Error(rule.Place, $"the storey {KnownNames.Quote(rule.Name)} lacks \"floor\" or \"structure\"", "say what is underfoot and how thick it is");
        return null;
    }

    private StairwellDescription? HoleOf(TakenShape taken) => RingOf(taken) is { } corners ? new(findings.KeyOf(taken.Shape.Place), corners) : null;

    private ObjectDescription? ObjectOf(TakenShape taken, StoreyName storey)
    {
        if (RingOf(taken) is not { } corners) return null;
        if (taken.Rule.HeightMetres is null) findings.Remark($"objects without a stated height are taken to be {UsualObjectMetres} m high");
        findings.Take(storey, "objects", taken.Rule.Construction!.Value.Value, 1);
        return new(
            findings.KeyOf(taken.Shape.Place),
            findings.NameFor("object", taken.Name, taken.Rule.Construction!.Value.Value),
            corners,
            taken.Rule.SillMetres ?? 0,
            taken.Rule.HeightMetres ?? UsualObjectMetres,
            taken.Rule.Construction!.Value);
    }

    private ImmutableArray<PlanPoint>? RingOf(TakenShape taken)
    {
        if (taken.Shape.Lines is [{ IsRing: true } ring]) return [.. ring.RingCorners.Select(PieceNoding.PointOf)];
        findings.Leave(taken.Shape, "it needs one closed outline");
        return null;
    }
}
