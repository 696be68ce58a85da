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

    private readonly MapReader _map;
    private readonly ConstructionReader _constructions;
    private readonly DescribedPlaces _places;
    private readonly DiagnosticList _problems;
    private readonly HashSet<string> _unreadableRooms = [];
    private readonly List<PlacedName> _roomNames = [];
    private readonly List<PlacedName> _openingNames = [];

    private StoreyReader(MapReader map, ConstructionReader constructions, DescribedPlaces places, DiagnosticList problems)
    {
        _map = map;
        _constructions = constructions;
        _places = places;
        _problems = problems;
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
        MapReader? map = MapReader.Open(node, "a storey", problems, Keys);
        if (map?.RequiredText("storey") is not { } name) return null;

        StoreyReader reader = new(map, constructions, places, problems);
        StoreyDescription description = reader.Describe(new(name), below?.Description, northDegrees);
        if (problems.ErrorCount == errorsBefore && description.Rooms.IsEmpty && description.Walls.IsEmpty)
            problems.Error(
                map.PlaceOf("storey"),
                $"the storey {KnownNames.Quote(name)} has neither rooms nor walls",
                "write its rooms, or its walls as lines; leave out a storey without either");
        return new(description, map.PlaceOf("storey"), [.. reader._roomNames], [.. reader._openingNames], problems.ErrorCount == errorsBefore);
    }

    private StoreyDescription Describe(StoreyName name, StoreyDescription? below, double northDegrees)
    {
        FloorDescription? floor = ReadFloor(isLowest: below is null);
        ImmutableArray<RoomDescription> rooms = ReadRooms();
        WallPlaceReader wallPlaces = new([.. _roomNames], _unreadableRooms, _problems);
        return new()
        {
            Source = _places.Add(_map.PlaceOf("storey"), _map),
            Name = name,
            ElevationMetres = below is null ? 0 : below.ElevationMetres + below.CeilingMetres + (floor?.ThicknessMetres ?? 0),

            // A ceiling that cannot be read has its error; the highest one keeps it from causing others.
            CeilingMetres = _map.RequiredNumber("ceiling", CeilingMetres) ?? CeilingMetres.Max,
            Outer = FindDefault("outer"),
            Inner = FindDefault("inner"),
            NorthDegrees = northDegrees,
            Floor = floor,
            Rooms = rooms,
            Walls = [.. _map.List("walls").Select(node => ReadWall(node, wallPlaces)).OfType<WallDescription>()],
            Openings = [.. _map.List("openings").Select(node => ReadOpening(node, wallPlaces)).OfType<OpeningDescription>()],
            Objects = [.. _map.List("objects").Select(ReadObject).OfType<ObjectDescription>()],
        };
    }

    // A default that cannot be read has its error; any name keeps it from causing others.
    private ConstructionName? FindDefault(string key) =>
        _constructions.Find(_map, key, ConstructionUse.Wall, isRequired: false) ?? (_map.Has(key) ? new ConstructionName("") : null);

    private FloorDescription? ReadFloor(bool isLowest)
    {
        if (isLowest)
        {
            foreach (string key in FloorKeys.Where(_map.Has))
                _problems.Error(
                    _map.PlaceOf(key),
                    $"the lowest storey has no \"{key}\"",
                    "storeys are listed lowest first; nothing below the lowest one is planned");
            return null;
        }

        ConstructionName? construction = _constructions.Find(_map, "floor", ConstructionUse.Floor, isRequired: true);
        double? thicknessMetres = _map.RequiredNumber("structure", StructureMetres);
        ImmutableArray<StairwellDescription> stairwells = [.. _map.List("stairwells").Select(ReadStairwell).OfType<StairwellDescription>()];
        return construction is { } name && thicknessMetres is { } thickness
            ? new(_places.Add(_map.PlaceOf("floor"), _map), name, thickness, stairwells)
            : null;
    }

    private StairwellDescription? ReadStairwell(YamlNode node)
    {
        MapReader? map = MapReader.Open(node, "a stairwell", _problems, [.. OutlineReader.Keys]);
        return map is not null && OutlineReader.Read(map, _problems) is { } corners ? new(_places.Add(map.Place, map), corners) : null;
    }

    private ImmutableArray<RoomDescription> ReadRooms()
    {
        switch (_map.Find("rooms"))
        {
            case null or YamlText { IsEmpty: true }: return [];
            case YamlMap rooms: return [.. rooms.Entries.Select(ReadRoom).OfType<RoomDescription>()];
            case { } other:
                _problems.Error(
                    other.Place,
                    $"rooms are written as names with outlines, not as {other.Describe}",
                    "write \"hall: { from: [0, 0], to: [1.9, 6.2] }\", one room a line");
                return [];
        }
    }

    private RoomDescription? ReadRoom(YamlEntry entry)
    {
        if (!MapReader.CheckName(entry, "a room", _problems)) return null;
        _roomNames.Add(new(entry.Key, entry.Place));
        MapReader? map = MapReader.Open(entry.Value, "a room", _problems, [.. OutlineReader.Keys]);
        if (map is not null && OutlineReader.Read(map, _problems) is { } corners)
            return new(_places.Add(entry.Place, map), new(entry.Key), corners);
        _unreadableRooms.Add(entry.Key);
        return null;
    }

    private WallDescription? ReadWall(YamlNode node, WallPlaceReader wallPlaces)
    {
        MapReader? map = MapReader.Open(node, "a wall", _problems, [.. WallPlaceReader.Keys, "is", "name"]);
        if (map is null) return null;
        WallPlace? place = wallPlaces.Read(map, acceptsName: false);
        ConstructionName? construction = _constructions.Find(map, "is", ConstructionUse.Wall, isRequired: true);
        string? name = map.Text("name");
        return place is not null && construction is { } found ? new(_places.Add(map.Place, map), place, found, name) : null;
    }

    private OpeningDescription? ReadOpening(YamlNode node, WallPlaceReader wallPlaces)
    {
        MapReader? map = MapReader.Open(node, "an opening", _problems, OpeningKeys);
        if (map is null) return null;
        if (map.Has("door") == map.Has("window"))
        {
            _problems.Error(map.Place, "an opening is either a door or a window", "write \"door: name\" or \"window: name\"");
            return null;
        }

        bool isDoor = map.Has("door");
        string key = isDoor ? "door" : "window";
        string? name = map.RequiredText(key);
        if (name is not null) _openingNames.Add(new(name, map.PlaceOf(key)));

        WallPlace? place = wallPlaces.Read(map, acceptsName: true);
        double? offsetMetres = map.RequiredNumber("at", OpeningRanges.OffsetMetres);
        double? widthMetres = map.RequiredNumber("width", OpeningRanges.WidthMetres);
        double? sillMetres = isDoor && !map.Has("sill") ? 0 : map.RequiredNumber("sill", OpeningRanges.SillMetres);
        double? heightMetres = map.RequiredNumber("height", OpeningRanges.HeightMetres);
        ConstructionName? construction = _constructions.Find(map, "is", isDoor ? ConstructionUse.Door : ConstructionUse.Window, isRequired: true);
        bool isOpen = map.Flag("open");
        bool hasMeasures = offsetMetres is not null && widthMetres is not null && sillMetres is not null && heightMetres is not null;
        if (name is null || place is null || construction is null || !hasMeasures) return null;
        return new()
        {
            Source = _places.Add(map.PlaceOf(key), map),
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
        MapReader? map = MapReader.Open(node, "an object", _problems, ["object", .. OutlineReader.Keys, "base", "height", "is"]);
        if (map is null) return null;
        string? name = map.RequiredText("object");
        ImmutableArray<PlanPoint>? corners = OutlineReader.Read(map, _problems);
        int errorsBefore = _problems.ErrorCount;
        double baseMetres = map.Number("base", OpeningRanges.SillMetres) ?? 0;
        double? heightMetres = map.RequiredNumber("height", OpeningRanges.HeightMetres);
        ConstructionName? construction = _constructions.Find(map, "is", ConstructionUse.Object, isRequired: true);
        if (name is null || corners is null || heightMetres is null || construction is null || _problems.ErrorCount > errorsBefore) return null;
        return new(_places.Add(map.PlaceOf("object"), map), name, corners.Value, baseMetres, heightMetres.Value, construction.Value);
    }
}
