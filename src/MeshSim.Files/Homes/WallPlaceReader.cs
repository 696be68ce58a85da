using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Yaml;
using MeshSim.FloorPlans.Descriptions;

namespace MeshSim.Files.Homes;

/// <summary>Reads which wall of a storey is meant.</summary>
/// <param name="rooms">Every room that the storey lists.</param>
/// <param name="unreadable">Those of them that could not be read; what names them is left out without another error.</param>
/// <param name="problems">Takes the errors.</param>
internal sealed class WallPlaceReader(ImmutableArray<PlacedName> rooms, IReadOnlySet<string> unreadable, DiagnosticList problems)
{
    /// <summary>The keys by which a wall of a storey is found.</summary>
    public static readonly ImmutableArray<string> Keys = ["between", "of", "facing", "line"];

    private static readonly Dictionary<string, CompassSide> Sides = new()
    {
        ["north"] = CompassSide.North,
        ["north-east"] = CompassSide.NorthEast,
        ["east"] = CompassSide.East,
        ["south-east"] = CompassSide.SouthEast,
        ["south"] = CompassSide.South,
        ["south-west"] = CompassSide.SouthWest,
        ["west"] = CompassSide.West,
        ["north-west"] = CompassSide.NorthWest,
    };

    /// <summary>The wall that a map names; null with an error, or when it names an unreadable room.</summary>
    /// <param name="map">The map.</param>
    /// <param name="acceptsName">Whether "wall" with a name will do.</param>
    public WallPlace? Read(MapReader map, bool acceptsName)
    {
        bool isSide = map.Has("of") || map.Has("facing");
        int ways = new[] { map.Has("between"), isSide, map.Has("line"), acceptsName && map.Has("wall") }.Count(way => way);
        if (ways != 1)
        {
            string named = acceptsName ? ", \"wall: name\"" : "";
            string message = ways == 0 ? "it does not say which wall is meant" : "it says in more than one way which wall is meant";
            problems.Error(
                map.Place,
                message,
                $"use one of \"between: [room, room]\", \"of: room\" with \"facing: south\"{named}, \"line: [[x, y], [x, y]]\"");
            return null;
        }

        if (map.Has("between")) return Between(map);
        if (isSide) return SideOf(map);
        if (map.Has("line")) return OutlineReader.Line(map, "line", problems) is var (start, end) ? new WallPlace.Line(start, end) : null;
        return map.Text("wall") is { } name ? new WallPlace.Named(name) : null;
    }

    private WallPlace.Between? Between(MapReader map)
    {
        int errorsBefore = problems.ErrorCount;
        ImmutableArray<PlacedName> pair = map.Names("between");
        if (problems.ErrorCount > errorsBefore) return null;
        if (pair.Length != 2)
        {
            problems.Error(
                map.PlaceOf("between"),
                FormattableString.Invariant($"a wall lies between 2 rooms, not {pair.Length}"),
                "write [room, room]; for an outer wall \"of: room\" with \"facing: south\"");
            return null;
        }

        bool areReadable = Check(pair[0]) & Check(pair[1]);
        return areReadable ? new(new(pair[0].Name), new(pair[1].Name)) : null;
    }

    private WallPlace.SideOf? SideOf(MapReader map)
    {
        string? room = map.RequiredText("of"), facing = map.RequiredText("facing");
        bool isReadable = room is not null && Check(new(room, map.PlaceOf("of")));
        if (facing is null) return null;
        if (Sides.TryGetValue(facing, out CompassSide side)) return isReadable ? new(new(room!), side) : null;
        problems.Error(
            map.PlaceOf("facing"),
            $"{KnownNames.Quote(facing)} is no side of the compass",
            KnownNames.Help(facing, Sides.Keys, "sides"));
        return null;
    }

    private bool Check(PlacedName room)
    {
        string[] names = [.. rooms.Select(known => known.Name)];
        if (names.Contains(room.Name)) return !unreadable.Contains(room.Name);
        problems.Error(
            room.Place,
            $"no room of this storey is called {KnownNames.Quote(room.Name)}",
            () => KnownNames.Help(room.Name, names, "rooms"));
        return false;
    }
}
