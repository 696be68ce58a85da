using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Walls;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Plans;

/// <summary>Asks for the labels of one storey, the most important first: rooms, devices, letters of walls, objects.</summary>
internal sealed class PlanLabels
{
    private const float OverWallCost = 14;

    /// <summary>A shorter stretch of wall goes without its letter, pixels.</summary>
    private const float ShortestWall = 34;

    /// <summary>Half a square sign of an outlet, pixels.</summary>
    private const float OutletReach = 6;

    /// <summary>Where along a stretch of wall its letter may stand, the best place first.</summary>
    private static readonly float[] LetterShares = [0.5f, 0.35f, 0.65f];

    private readonly PlanStorey plan;
    private readonly Ink ink;
    private readonly LabelPlacer placer;
    private readonly (Wall Wall, WallRun Run)[] walls;

    private PlanLabels(PlanStorey plan, PlanDraft draft, Ink ink)
    {
        (this.plan, this.ink) = (plan, ink);
        walls = [.. plan.Storey.Walls.Select(wall => (wall, WallRun.Of(wall, draft.Home, plan.Projection)))];
        IEnumerable<PixelBox> symbols = plan.Devices.Concat<Mark>(plan.Remarks).Select(mark => mark.Box)
            .Concat(plan.Outlets.Select(outlet => PixelBox.About(outlet, 2 * OutletReach, 2 * OutletReach)));
        placer = new(plan.Map, [.. symbols], [.. walls.Select(one => new Obstacle(one.Run.Start, one.Run.At(one.Run.LengthPixels, 0), OverWallCost, one.Run.ThicknessPixels / 2))]);
    }

    /// <summary>The labels that found a place.</summary>
    public static ImmutableArray<PlacedLabel> Of(PlanStorey plan, PlanDraft draft, PlanColumn column, Ink ink)
    {
        PlanLabels labels = new(plan, draft, ink);
        Dictionary<ConstructionName, string> letters = column.Walls.ToDictionary(key => key.Construction, key => key.Letter);
        return
        [
            .. plan.Storey.Rooms.Select(room => labels.Room(room.Name.Value, room.Outline, Tone.Text))
                .Concat(draft.Unbuilt.Where(outline => outline.Storey == plan.Storey.Name).Select(outline => labels.Room(outline.Name, new(outline.Corners), Tone.Unreached)))
                .Concat(plan.Devices.Select(labels.Device))
                .Concat(labels.walls.Select(one => labels.Letter(one.Wall, one.Run, letters[one.Wall.Construction])))
                .Concat(plan.Storey.Objects.Select(thing => labels.Object(thing.Name, thing.Footprint)))
                .OfType<PlacedLabel>(),
        ];
    }

    /// <summary>Such as "4.2 × 3.6 m"; of a room with more corners the rectangle around it and its floor.</summary>
    public static string MeasuresOf(Polygon outline)
    {
        double width = Lattice.ToMetres(outline.Corners.Max(p => p.X) - (long)outline.Corners.Min(p => p.X));
        double depth = Lattice.ToMetres(outline.Corners.Max(p => p.Y) - (long)outline.Corners.Min(p => p.Y));
        double squareMetres = (double)Int128.Abs(outline.TwiceSignedArea) / 2 / ((double)Lattice.StepsPerMetre * Lattice.StepsPerMetre);
        string floor = Math.Abs(squareMetres - (width * depth)) > 0.005 ? FormattableString.Invariant($", {squareMetres:0.0} m²") : "";
        return FormattableString.Invariant($"{width:0.00} × {depth:0.00} m{floor}");
    }

    private PlacedLabel? Room(string name, Polygon outline, SkiaSharp.SKColor colour)
    {
        LabelLine large = new(name, TextStyle.Room, colour), small = new(name, TextStyle.StrongLabel, colour);
        LabelLine measures = new(MeasuresOf(outline), TextStyle.Label, colour), fine = measures with { Style = TextStyle.Small };
        return Inside([large, measures]) ?? Inside([small, fine]) ?? Beside([small, fine]);

        PlacedLabel? Inside(ImmutableArray<LabelLine> lines) =>
            Place(LabelKind.Room, name, lines, (width, height) => LabelPlaces.Inside(outline, plan.Projection, width, height, rim: 4));

        PlacedLabel? Beside(ImmutableArray<LabelLine> lines)
        {
            Pixel[] corners = plan.Projection.ToPixels(outline);
            Pixel middle = new(corners.Average(p => p.X), corners.Average(p => p.Y));
            return Place(LabelKind.Room, name, lines, (width, height) => LabelPlaces.Beside(PixelBox.About(middle, 0, 0), middle, width, height));
        }
    }

    private PlacedLabel? Device(DeviceMark mark) =>
        Place(LabelKind.Device, mark.Device.Id.Value, [new(mark.Device.Id.Value, TextStyle.Label, Tone.Text)], (width, height) => LabelPlaces.Beside(mark.Box, mark.Centre, width, height));

    private PlacedLabel? Letter(Wall wall, WallRun run, string letter)
    {
        IEnumerable<Pixel> along = run.Solid(wall, plan.Projection)
            .Where(part => part.To - part.From >= ShortestWall)
            .OrderByDescending(part => part.To - part.From)
            .SelectMany(part => LetterShares.Select(share => run.At(part.From + ((part.To - part.From) * share), 0)));
        return placer.Place(new()
        {
            Kind = LabelKind.Object,
            Key = wall.Name,
            Lines = [new(letter, TextStyle.Small, Tone.Text)],
            Places = along.Select((centre, i) => new LabelPlace(PixelBox.About(centre, ink.WidthOf(letter, TextStyle.Small) + 7, 15), i)),
        });
    }

    private PlacedLabel? Object(string name, Polygon outline) =>
        Place(LabelKind.Object, name, [new(name, TextStyle.Small, Tone.Text)], (width, height) => LabelPlaces.Inside(outline, plan.Projection, width, height, rim: 1))
        ?? Place(LabelKind.Object, name, [.. name.Split(' ').Select(word => new LabelLine(word, TextStyle.Small, Tone.Text))], (width, height) =>
        {
            Pixel[] corners = plan.Projection.ToPixels(outline);
            PixelBox box = new(corners.Min(p => p.X), corners.Min(p => p.Y), corners.Max(p => p.X), corners.Max(p => p.Y));
            return LabelPlaces.Inside(outline, plan.Projection, width, height, rim: 1).Concat(LabelPlaces.Beside(box, box.Centre, width, height));
        });

    private PlacedLabel? Place(LabelKind kind, string key, ImmutableArray<LabelLine> lines, Func<float, float, IEnumerable<LabelPlace>> places)
    {
        float width = MathF.Ceiling(lines.Max(line => ink.WidthOf(line.Text, line.Style))) + (2 * MapLabels.PadX);
        float height = lines.Sum(line => line.Style.LineHeight) + (2 * MapLabels.PadY);
        return placer.Place(new() { Kind = kind, Key = key, Lines = lines, Places = places(width, height) });
    }
}
