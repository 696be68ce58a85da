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

    private static ImmutableArray<string> Row(MarginMap map, (FloorPlans.RoomName Room, double DarkShare) room) =>
        [map.Storey.Value, room.Room.Value, Figures.Percent(room.DarkShare)];
}
