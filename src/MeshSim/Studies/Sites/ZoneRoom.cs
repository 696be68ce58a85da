using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields;

namespace MeshSim.Studies.Sites;

/// <summary>The points of a grid in one room, less the holes of stairwells in its floor; on a storey without rooms all of them together.</summary>
/// <param name="Storey">The storey.</param>
/// <param name="Room">The room, or null.</param>
/// <param name="Points">Places in the grid's values.</param>
internal sealed record ZoneRoom(StoreyName Storey, RoomName? Room, ImmutableArray<int> Points)
{
    /// <summary>The rooms of a storey that have a point. A point on the line between two rooms belongs to the first.</summary>
    public static ImmutableArray<ZoneRoom> Of(Storey storey, FieldGrid grid)
    {
        if (storey.Rooms.IsEmpty) return [new(storey.Name, null, [.. Enumerable.Range(0, grid.Count)])];

        var points = storey.Rooms.Select(_ => ImmutableArray.CreateBuilder<int>()).ToArray();
        for (int point = 0; point < grid.Count; point++)
        {
            PlanPoint place = grid.At(point % grid.Columns, point / grid.Columns).Plan;
            if (storey.Floor?.Stairwells.Any(stairwell => stairwell.Outline.Locate(PathPoint.At(place)) == Location.Inside) == true) continue;
            for (int room = 0; room < storey.Rooms.Length; room++)
            {
                if (!storey.Rooms[room].Outline.Contains(place)) continue;
                points[room].Add(point);
                break;
            }
        }

        return [.. storey.Rooms.Zip(points, (room, inside) => new ZoneRoom(storey.Name, room.Name, inside.ToImmutable())).Where(room => room.Points.Length > 0)];
    }
}
