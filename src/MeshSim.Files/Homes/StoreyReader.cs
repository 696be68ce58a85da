using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Yaml;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Files.Homes;

/// <summary>Reads one storey of <c>home.yaml</c>.</summary>
internal sealed class StoreyReader
{
    /// <summary>Accepted clear heights.</summary>
    public static readonly ValidRange CeilingMetres = new(0.5, 20, "m");

    /// <summary>Accepted thicknesses of a floor structure.</summary>
    public static readonly ValidRange StructureMetres = new(0.01, 3, "m");

    private static readonly ImmutableArray<string> FloorKeys = ["floor", "structure", "stairwells"];
    private static readonly string[] Keys = ["storey", "ceiling", .. FloorKeys, "outer", "inner", "rooms", "walls", "openings", "objects"];
    private static readonly string[] OpeningKeys =
        ["door", "window", .. WallPlaceReader.Keys, "wall", "at", "width", "sill", "height", "is", "open"];

    private readonly MapReader map;
    private readonly ConstructionReader constructions;
    private readonly DescribedPlaces places;
    private readonly DiagnosticList problems;
    private readonly HashSet<string> unreadableRooms = [];
    private readonly List<PlacedName> roomNames = [];
    private readonly List<PlacedName> openingNames = [];

    private StoreyReader(MapReader map, ConstructionReader constructions, DescribedPlaces places, DiagnosticList problems)
    {
        this.map = map;
        this.constructions = constructions;
        this.places = places;
        this.problems = problems;
    }

    /// <summary>Reads a storey; null with an error when it has no name.</summary>
    /// <param name="node">What describes it.</param>
    /// <param name="below">The storey below it, or null.</param>
    /// <param name="northDegrees">Direction of north on the plan.</param>
    /// <param name="constructions">What may be named.</param>
    /// <param name="places">Takes the places of its elements.</param>
    /// <param name="problems">Takes the errors.</param>
    public static StoreyDocument? Read(
        YamlNode node,
        StoreyDocument? below,
        double northDegrees,
        ConstructionReader constructions,
        DescribedPlaces places,
        DiagnosticList problems)
    {
        int errorsBefore = problems.ErrorCount;
        MapReader? entries = MapReader.Open(node, "a storey", problems, Keys);
        if (entries?.RequiredText("storey") is not { } name) return null;

        StoreyReader reader = new(entries, constructions, places, problems);
        StoreyDescription description = reader.Describe(new(name), below?.Description, northDegrees);
        if (problems.ErrorCount == errorsBefore && description.Rooms.IsEmpty && description.Walls.IsEmpty)
            problems.Error(
                entries.PlaceOf("storey"),
                $"the storey {KnownNames.Quote(name)} has neither rooms nor walls",
                "write its rooms, or its walls as lines; leave out a storey without either");
        return new(description, entries.PlaceOf("storey"), [.. reader.roomNames], [.. reader.openingNames], problems.ErrorCount == errorsBefore);
    }

    private StoreyDescription Describe(StoreyName name, StoreyDescription? below, double northDegrees)
    {
        FloorDescription? floor = ReadFloor(isLowest: below is null);
        ImmutableArray<RoomDescription> rooms = ReadRooms();
        WallPlaceReader wallPlaces = new([.. roomNames], unreadableRooms, problems);
        return new()
        {
            Source = places.Add(map.PlaceOf("storey"), map),
            Name = name,
            ElevationMetres = below is null ? 0 : below.ElevationMetres + below.CeilingMetres + (floor?.ThicknessMetres ?? 0),

            // A ceiling that cannot be read has its error; the highest one keeps it from causing others.
            CeilingMetres = map.RequiredNumber("ceiling", CeilingMetres) ?? CeilingMetres.Max,
            Outer = FindDefault("outer"),
            Inner = FindDefault("inner"),
            NorthDegrees = northDegrees,
            Floor = floor,
            Rooms = rooms,
            Walls = [.. map.List("walls").Select(node => ReadWall(node, wallPlaces)).OfType<WallDescription>()],
            Openings = [.. map.List("openings").Select(node => ReadOpening(node, wallPlaces)).OfType<OpeningDescription>()],
            Objects = [.. map.List("objects").Select(ReadObject).OfType<ObjectDescription>()],
        };
    }

    // A default that cannot be read has its error; any name keeps it from causing others.
    private ConstructionName? FindDefault(string key) =>
        constructions.Find(map, key, ConstructionUse.Wall, isRequired: false) ?? (map.Has(key) ? new ConstructionName("") : null);

    private FloorDescription? ReadFloor(bool isLowest)
    {
        if (isLowest)
        {
            foreach (string key in FloorKeys.Where(map.Has))
                problems.Error(
                    map.PlaceOf(key),
                    $"the lowest storey has no \"{key}\"",
                    "storeys are listed lowest first; nothing below the lowest one is planned");
            return null;
        }

        ConstructionName? construction = constructions.Find(map, "floor", ConstructionUse.Floor, isRequired: true);
        double? thicknessMetres = map.RequiredNumber("structure", StructureMetres);
        ImmutableArray<StairwellDescription> stairwells = [.. map.List("stairwells").Select(ReadStairwell).OfType<StairwellDescription>()];
        return construction is { } name && thicknessMetres is { } thickness
            ? new(places.Add(map.PlaceOf("floor"), map), name, thickness, stairwells)
            : null;
    }

    private StairwellDescription? ReadStairwell(YamlNode node)
    {
        MapReader? entries = MapReader.Open(node, "a stairwell", problems, [.. OutlineReader.Keys]);
        return entries is not null && OutlineReader.Read(entries, problems) is { } corners ? new(places.Add(entries.Place, entries), corners) : null;
    }

    private ImmutableArray<RoomDescription> ReadRooms()
    {
        switch (map.Find("rooms"))
        {
            case null or YamlText { IsEmpty: true }: return [];
            case YamlMap rooms: return [.. rooms.Entries.Select(ReadRoom).OfType<RoomDescription>()];
            case { } other:
                problems.Error(
                    other.Place,
                    $"rooms are written as names with outlines, not as {other.Describe}",
                    "write \"hall: { from: [0, 0], to: [1.9, 6.2] }\", one room a line");
                return [];
        }
    }

    private RoomDescription? ReadRoom(YamlEntry entry)
    {
        if (!MapReader.CheckName(entry, "a room", problems)) return null;
        roomNames.Add(new(entry.Key, entry.Place));
        MapReader? entries = MapReader.Open(entry.Value, "a room", problems, [.. OutlineReader.Keys]);
        if (entries is not null && OutlineReader.Read(entries, problems) is { } corners)
            return new(places.Add(entry.Place, entries), new(entry.Key), corners);
        unreadableRooms.Add(entry.Key);
        return null;
    }

    private WallDescription? ReadWall(YamlNode node, WallPlaceReader wallPlaces)
    {
        MapReader? entries = MapReader.Open(node, "a wall", problems, [.. WallPlaceReader.Keys, "is", "name"]);
        if (entries is null) return null;
        WallPlace? place = wallPlaces.Read(entries, acceptsName: false);
        ConstructionName? construction = constructions.Find(entries, "is", ConstructionUse.Wall, isRequired: true);
        string? name = entries.Text("name");
        return place is not null && construction is { } found ? new(places.Add(entries.Place, entries), place, found, name) : null;
    }

    private OpeningDescription? ReadOpening(YamlNode node, WallPlaceReader wallPlaces)
    {
        MapReader? entries = MapReader.Open(node, "an opening", problems, OpeningKeys);
        if (entries is null) return null;
        if (entries.Has("door") == entries.Has("window"))
        {
            problems.Error(entries.Place, "an opening is either a door or a window", "write \"door: name\" or \"window: name\"");
            return null;
        }

        bool isDoor = entries.Has("door");
        string key = isDoor ? "door" : "window";
        string? name = entries.RequiredText(key);
        if (name is not null) openingNames.Add(new(name, entries.PlaceOf(key)));

        WallPlace? place = wallPlaces.Read(entries, acceptsName: true);
        double? offsetMetres = entries.RequiredNumber("at", OpeningRanges.OffsetMetres);
        double? widthMetres = entries.RequiredNumber("width", OpeningRanges.WidthMetres);
        double? sillMetres = isDoor && !entries.Has("sill") ? 0 : entries.RequiredNumber("sill", OpeningRanges.SillMetres);
        double? heightMetres = entries.RequiredNumber("height", OpeningRanges.HeightMetres);
        ConstructionName? construction = constructions.Find(entries, "is", isDoor ? ConstructionUse.Door : ConstructionUse.Window, isRequired: true);
        bool isOpen = entries.Flag("open");
        bool hasMeasures = offsetMetres is not null && widthMetres is not null && sillMetres is not null && heightMetres is not null;
        if (name is null || place is null || construction is null || !hasMeasures) return null;
        return new()
        {
            Source = places.Add(entries.PlaceOf(key), entries),
            Name = name,
            Kind = isDoor ? OpeningKind.Door : OpeningKind.Window,
            Place = place,
            OffsetMetres = offsetMetres!.Value,
            WidthMetres = widthMetres!.Value,
            SillMetres = sillMetres!.Value,
            HeightMetres = heightMetres!.Value,
            Construction = construction.Value,
            IsOpen = isOpen,
        };
    }

    private ObjectDescription? ReadObject(YamlNode node)
    {
        MapReader? entries = MapReader.Open(node, "an object", problems, ["object", .. OutlineReader.Keys, "base", "height", "is"]);
        if (entries is null) return null;
        string? name = entries.RequiredText("object");
        ImmutableArray<PlanPoint>? corners = OutlineReader.Read(entries, problems);
        int errorsBefore = problems.ErrorCount;
        double baseMetres = entries.Number("base", OpeningRanges.SillMetres) ?? 0;
        double? heightMetres = entries.RequiredNumber("height", OpeningRanges.HeightMetres);
        ConstructionName? construction = constructions.Find(entries, "is", ConstructionUse.Object, isRequired: true);
        if (name is null || corners is null || heightMetres is null || construction is null || problems.ErrorCount > errorsBefore) return null;
        return new(places.Add(entries.PlaceOf("object"), entries), name, corners.Value, baseMetres, heightMetres.Value, construction.Value);
    }
}
