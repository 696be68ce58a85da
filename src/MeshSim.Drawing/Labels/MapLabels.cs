using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Margins;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Walls;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Labels;

/// <summary>Asks for all labels of a map, the most important first, and keeps what found a place.</summary>
internal sealed class MapLabels
{
    /// <summary>Text beside the plate's edge, pixels.</summary>
    public const float PadX = 3, PadY = 1;

    /// <summary>Covering a wall is worse than standing up to <see cref="NearbyCost"/> away; a route can be followed under a label.</summary>
    private const float OverWallCost = 14, OverRouteCost = 4;

    /// <summary>Pieces of a zone below this are hatched and not named, m²: nobody looks for an outlet on a square of half a metre.</summary>
    private const double SmallestNamedSquareMetres = 0.25;

    /// <summary>What a place costs that is as far from its thing as a reader's eye still follows without a search.</summary>
    public const float NearbyCost = 10;

    private readonly MapContents map;
    private readonly Ink ink;
    private readonly LabelPlacer placer;
    private readonly ContourPlaces contourPlaces;

    private MapLabels(MapContents map, Ink ink)
    {
        (this.map, this.ink) = (map, ink);
        contourPlaces = new(map);
        Dictionary<Devices.DeviceId, Pixel> places = map.Marks.Devices.ToDictionary(mark => mark.Device.Id, mark => mark.Centre);
        placer = new(
            map.Layout.Map,
            [.. map.Marks.All.Select(mark => mark.Box)],
            [.. WallsOf(map), .. map.Routes.Lines.Select(line => new Obstacle(places[line.From], places[line.To], OverRouteCost))]);
    }

    /// <summary>The labels of a map. Devices whose label finds no place are missing; contour lines may well be.</summary>
    public static ImmutableArray<PlacedLabel> Of(MapContents map, Ink ink)
    {
        var labels = new MapLabels(map, ink);
        return
        [
            .. map.Storey.Rooms.Select(labels.Room)
                .Concat(map.Marks.Devices.Where(mark => mark.Standing == Standing.Unreached).Select(labels.Device))
                .Concat(map.Marks.Repeaters.Select(labels.Repeater))
                .Concat(map.Zones.SelectMany(labels.Zone))
                .Concat(map.Routes.Stubs.Select(labels.Stub))
                .Concat(map.Marks.Devices.Where(mark => mark.Standing != Standing.Unreached).Select(labels.Device))
                .Concat(map.Storey.Objects.Select(thing => labels.Object(thing.Name, thing.Footprint)))
                .Concat(map.Stairwells.Select(hole => labels.Object(hole.LeadsDown ? "stairs down" : "stairs up", hole.Outline)))
                .Concat(map.Contours.Select(labels.Contour))
                .OfType<PlacedLabel>(),
        ];
    }

    /// <summary>The walls as labels meet them.</summary>
    public static IEnumerable<Obstacle> WallsOf(MapContents map) => map.Storey.Walls
        .Select(wall => WallRun.Of(wall, map.Coverage.Home, map.Layout.Projection))
        .Select(run => new Obstacle(run.Start, run.At(run.LengthPixels, 0), OverWallCost, run.ThicknessPixels / 2));

    private PlacedLabel? Room(Room room)
    {
        LabelLine large = new(room.Name.Value, TextStyle.Room, Tone.Text), small = new(room.Name.Value, TextStyle.StrongLabel, Tone.Text);
        LabelLine[] note = map.RoomNotes.TryGetValue(room.Name, out string? words) ? [new(words, TextStyle.Label, Tone.Text)] : [];
        return InRoom(room, [large, .. note]) ?? InRoom(room, [small, .. note]) ?? InRoom(room, [small]) ?? BesideRoom(room, [small]);
    }

    private PlacedLabel? InRoom(Room room, ImmutableArray<LabelLine> lines) =>
        Place(LabelKind.Room, room.Name.Value, lines, (width, height) =>
            LabelPlaces.Inside(room.Outline, map.Layout.Projection, width, height, rim: 4));

    private PlacedLabel? BesideRoom(Room room, ImmutableArray<LabelLine> lines)
    {
        Pixel[] corners = map.Layout.Projection.ToPixels(room.Outline);
        Pixel middle = new(corners.Average(p => p.X), corners.Average(p => p.Y));
        return Place(LabelKind.Room, room.Name.Value, lines, (width, height) =>
            LabelPlaces.Beside(PixelBox.About(middle, 0, 0), middle, width, height));
    }

    private PlacedLabel? Device(DeviceMark mark)
    {
        LabelLine line = mark.Standing switch
        {
            Standing.Unreached => new($"{mark.Device.Id}: {Column.NoReliableWay}", TextStyle.StrongLabel, Tone.Unreached),
            Standing.Off => new(mark.Device.Id + " (off)", TextStyle.Label, Tone.Quiet),
            _ => new(mark.Device.Id.Value, TextStyle.Label, Tone.Text),
        };
        return Place(LabelKind.Device, mark.Device.Id.Value, [line], (width, height) => LabelPlaces.Beside(mark.Box, mark.Centre, width, height));
    }

    private PlacedLabel? Repeater(RepeaterMark mark)
    {
        string id = mark.Outlet.Id.Value;
        LabelLine line = new(map.SiteLead + id, TextStyle.StrongLabel, Tone.Repeater);
        return Place(LabelKind.Repeater, id, [line], (width, height) => LabelPlaces.Beside(mark.Box, mark.Centre, width, height));
    }

    /// <summary>Each piece is named: a reader need not tell hatchings apart to know whose it is. A low piece gets the name alone.</summary>
    private IEnumerable<PlacedLabel?> Zone(Zones.ZoneShape zone)
    {
        LabelLine name = new(zone.Name, TextStyle.StrongLabel, Tone.Zone);
        foreach (Zones.ZonePatch patch in zone.Patches.Where(patch => patch.AreaSquareMetres >= SmallestNamedSquareMetres))
        {
            LabelLine area = new(patch.Area, TextStyle.Label, Tone.Zone);
            bool fits = patch.HeightPixels >= name.Style.LineHeight + area.Style.LineHeight;
            yield return Place(LabelKind.Zone, zone.Name, fits ? [name, area] : [name], (width, height) => LabelPlaces.Within(patch.Points, width, height));
        }
    }

    private PlacedLabel? Stub(Routes.StoreyStub stub)
    {
        DeviceMark mark = map.Marks.Devices.First(device => device.Device.Id == stub.Here);
        Devices.Device other = map.Coverage.Home.Devices.First(device => device.Id == stub.Others[0]);
        Pixel direction = mark.TruePlace.DirectionTo(map.Layout.Projection.ToPixel(other.Point));
        LabelLine line = new(stub.Caption, TextStyle.Label, Tone.Route);
        return Place(
            LabelKind.Stub, stub.Here + " " + stub.Storey, [line],
            (width, height) => LabelPlaces.AtStub(mark.Centre, direction, Mark.Radius, width, height), leaderPointsBack: !stub.IsOutgoing);
    }

    /// <summary>A name inside an outline, in one line or else one word below the other.</summary>
    private PlacedLabel? Object(string name, Polygon outline)
    {
        PlacedLabel? InLines(IEnumerable<string> lines) =>
            Place(LabelKind.Object, name, [.. lines.Select(line => new LabelLine(line, TextStyle.Small, Tone.Text))], (width, height) =>
                LabelPlaces.Inside(outline, map.Layout.Projection, width, height, rim: 1));
        return InLines([name]) ?? InLines(name.Replace("-", "- ", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    private PlacedLabel? Contour(Contour contour)
    {
        bool isDesign = contour.LevelDb == map.Scale.HeavyDb;
        string text = FormattableString.Invariant($"{contour.LevelDb:0.#} dB");
        return Place(
            LabelKind.Contour, text, [new(text, isDesign ? TextStyle.StrongLabel : TextStyle.Small, Tone.Contour)],
            (width, height) => contourPlaces.On(contour, width, height));
    }

    private PlacedLabel? Place(
        LabelKind kind, string key, ImmutableArray<LabelLine> lines, Func<float, float, IEnumerable<LabelPlace>> places, bool leaderPointsBack = false)
    {
        float width = MathF.Ceiling(lines.Max(line => ink.WidthOf(line.Text, line.Style))) + (2 * PadX);
        float height = lines.Sum(line => line.Style.LineHeight) + (2 * PadY);
        return placer.Place(new() { Kind = kind, Key = key, Lines = lines, Places = places(width, height), LeaderPointsBack = leaderPointsBack });
    }
}
