using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Studies;

namespace MeshSim.Cli.Tables;

/// <summary>How much of each room is dark.</summary>
internal static class DarkRoomsTable
{
    /// <summary>The rooms of a network's maps, map by map.</summary>
    public static Table Of(IEnumerable<MarginMap> maps) => new(
        [new("Storey"), new("Room"), new("Dark %", true)],
        [.. maps.SelectMany(map => map.Rooms.Select(room => Row(map, room)))])
    {
        Notes = ["Dark: share of the floor where a battery device, mounted in the open, has less than the design margin."],
    };

    /// <summary>Rooms down, networks across.</summary>
    /// <param name="networks">The maps of each network, of the same storeys in the same order.</param>
    public static Table Across(ImmutableArray<ImmutableArray<MarginMap>> networks)
    {
        ImmutableArray<MarginMap>[] mapped = [.. networks.Where(maps => !maps.IsEmpty)];
        if (mapped.Length == 0) return new([new("Room")], []);
        return new(
            [new("Room"), .. mapped.Select(maps => new Column(maps[0].Network.Value, true))],
            [
                .. from pair in mapped[0].Index()
                   from room in pair.Item.Rooms.Index()
                   select (ImmutableArray<string>)
                   [
                       CoverageWords.Place(pair.Item.Storey, room.Item.Room),
                       .. mapped.Select(maps => Figures.Percent(maps[pair.Index].Rooms[room.Index].DarkShare)),
                   ],
            ])
        {
            Notes = Of([]).Notes,
        };
    }

    private static ImmutableArray<string> Row(MarginMap map, (FloorPlans.RoomName Room, double DarkShare) room) =>
        [map.Storey.Value, room.Room.Value, Figures.Percent(room.DarkShare)];
}
