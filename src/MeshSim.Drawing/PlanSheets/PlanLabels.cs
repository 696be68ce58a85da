using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Routes;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Walls;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Studies;

namespace MeshSim.Drawing.PlanSheets;

/// <summary>The lettering of a plan: numbers of devices with the letters of their circuits, names of rooms, links to other storeys.</summary>
internal sealed class PlanLabels
{
    /// <summary>A number over a wall cannot be read; over a route it can.</summary>
    private const float OverWallCost = 40, OverRouteCost = 3;

    private readonly SheetSubject subject;
    private readonly Storey storey;
    private readonly PlanDrawing plan;
    private readonly Ink ink;
    private readonly Obstacle[] walls;
    private readonly LabelPlacer placer;

    private PlanLabels(SheetSubject subject, Storey storey, PlanDrawing plan, Ink ink)
    {
        (this.subject, this.storey, this.plan, this.ink) = (subject, storey, plan, ink);
        walls = [.. storey.Walls.Select(ObstacleOf)];
        placer = new(
            plan.Frame,
            [.. plan.Devices.Select(mark => mark.Box), .. plan.Outlets.Select(outlet => PlanPainter.OutletBox(outlet.Place))],
            [.. walls, .. plan.Routes.Select(route => new Obstacle(plan.PlaceOf(route.From), plan.PlaceOf(route.To), OverRouteCost))]);
    }

    /// <summary>The labels, the most important first; what finds no place is left out.</summary>
    public static ImmutableArray<PlacedLabel> Of(SheetSubject subject, Storey storey, PlanDrawing plan, Ink ink)
    {
        var labels = new PlanLabels(subject, storey, plan, ink);
        return
        [
            .. plan.Devices.Select(labels.Number)
                .Concat(storey.Rooms.Select(labels.Room))
                .Concat(subject.Coverages.SelectMany(coverage => RouteLines.On(storey.Name, coverage).Stubs.Select(stub => labels.Stub(coverage, stub))))
                .Concat(storey.Objects.Select(thing => labels.Inside(thing.Name, thing.Footprint)))
                .Concat(MapContents.StairwellsOf(subject.Home.FloorPlan, storey).Select(hole => labels.Inside(hole.LeadsDown ? "stairs down" : "stairs up", hole.Outline)))
                .Concat(plan.Outlets.Select(labels.Outlet))
                .OfType<PlacedLabel>(),
        ];
    }

    private PlacedLabel? Number(DeviceMark mark)
    {
        string text = FormattableString.Invariant($"{subject.Numbers[mark.Device.Id]}{subject.LetterOf(mark.Device.Circuit)}");
        return Place(LabelKind.Device, mark.Device.Id.Value, new(text, TextStyle.StrongLabel, Tone.Text), (width, height) => LabelPlaces.Beside(mark.Box, mark.Centre, width, height));
    }

    private PlacedLabel? Room(Room room) =>
        InRoom(room, TextStyle.Room) ?? InRoom(room, TextStyle.Small) ?? BesideRoom(room);

    private PlacedLabel? InRoom(Room room, TextStyle style) =>
        Place(LabelKind.Room, room.Name.Value, new(room.Name.Value, style, Tone.Text), (width, height) =>
            LabelPlaces.Inside(room.Outline, plan.Projection, width, height, rim: 3).Where(place => !walls.Any(wall => wall.IsUnder(place.Box))));

    /// <summary>Outside with a line into the room; a name that does not find a place there either is left out.</summary>
    private PlacedLabel? BesideRoom(Room room)
    {
        Pixel[] corners = plan.Projection.ToPixels(room.Outline);
        Pixel middle = new(corners.Average(p => p.X), corners.Average(p => p.Y));
        return Place(LabelKind.Room, room.Name.Value, new(room.Name.Value, TextStyle.Small, Tone.Text), (width, height) =>
            LabelPlaces.Beside(PixelBox.About(middle, 0, 0), middle, width, height).Where(place => place.LeaderFrom is not null && !walls.Any(wall => wall.IsUnder(place.Box))));
    }

    private PlacedLabel? Stub(NetworkCoverage coverage, StoreyStub stub)
    {
        if (plan.Devices.FirstOrDefault(mark => mark.Device.Id == stub.Here) is not { } here) return null;
        Devices.Device other = subject.Device(stub.Others[0]);
        Pixel direction = here.TruePlace.DirectionTo(plan.Projection.ToPixel(other.Point));
        string numbers = string.Join(", ", stub.Others.Select(id => subject.Numbers[id]).Order());
        LabelLine line = new($"{(stub.IsUp ? "▲" : "▼")} {numbers}", TextStyle.Label, Tone.Route);
        return Place(
            LabelKind.Stub, coverage.Network.Name.Value, line,
            (width, height) => LabelPlaces.AtStub(here.Centre, direction, Mark.Radius, width, height), leaderPointsBack: !stub.IsOutgoing);
    }

    private PlacedLabel? Inside(string name, Polygon outline) =>
        Place(LabelKind.Object, name, new(name, TextStyle.Small, Tone.Quiet), (width, height) => LabelPlaces.Inside(outline, plan.Projection, width, height, rim: 1));

    private PlacedLabel? Outlet((Devices.Outlet Outlet, Pixel Place) outlet)
    {
        string letter = subject.LetterOf(outlet.Outlet.Circuit);
        PixelBox box = PlanPainter.OutletBox(outlet.Place);
        return letter.Length == 0
            ? null
            : Place(LabelKind.Object, outlet.Outlet.Id.Value, new(letter, TextStyle.Small, Tone.Quiet), (width, height) =>
                LabelPlaces.Beside(box, outlet.Place, width, height).Where(place => place.LeaderFrom is null));
    }

    private PlacedLabel? Place(LabelKind kind, string key, LabelLine line, Func<float, float, IEnumerable<LabelPlace>> places, bool leaderPointsBack = false)
    {
        float width = MathF.Ceiling(ink.WidthOf(line.Text, line.Style)) + (2 * MapLabels.PadX), height = line.Style.LineHeight + (2 * MapLabels.PadY);
        return placer.Place(new() { Kind = kind, Key = key, Lines = [line], Places = places(width, height), LeaderPointsBack = leaderPointsBack });
    }

    private Obstacle ObstacleOf(Wall wall)
    {
        WallRun run = WallRun.Of(wall, subject.Home, plan.Projection);
        return new(run.Start, run.At(run.LengthPixels, 0), OverWallCost, run.ThicknessPixels / 2);
    }
}
