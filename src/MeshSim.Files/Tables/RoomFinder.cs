using MeshSim.Files.Diagnostics;
using MeshSim.Files.Homes;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Quantities;

namespace MeshSim.Files.Tables;

/// <summary>Where a device or an outlet is: its storey, its point moved off the walls, its room.</summary>
/// <param name="Storey">Its storey.</param>
/// <param name="Point">Its point.</param>
/// <param name="HeightMetres">Its height above the floor, m.</param>
/// <param name="Room">Its room; null outdoors, and where the storey has none.</param>
internal readonly record struct FoundPlace(StoreyName Storey, PlanPoint Point, double HeightMetres, RoomName? Room);

/// <summary>Reads the columns storey, x, y, height and room of a row and finds the place that they mean.</summary>
/// <param name="storeys">The storeys of the home; null when the home could not be read, so that only the texts and numbers are checked.</param>
/// <param name="areComplete">Whether these are all that the home lists.</param>
/// <param name="problems">Takes the errors and notices.</param>
internal sealed class RoomFinder(IReadOnlyList<BuiltStorey>? storeys, bool areComplete, DiagnosticList problems)
{
    /// <summary>What stands in the place of a room for what is outside all of them. A room of that name comes first.</summary>
    public const string Outdoors = "outdoors";

    private static readonly ValidRange HeightMetres = new(-100, 100, "m");

    /// <summary>The place that a row means; null with an error, or when the home could not be read.</summary>
    public FoundPlace? Find(RowReader row)
    {
        string? storeyName = row.RequiredText("storey"), room = row.Text("room");
        double? xMetres = row.RequiredNumber("x", Lattice.CoordinateMetres), yMetres = row.RequiredNumber("y", Lattice.CoordinateMetres);
        double? heightMetres = row.RequiredNumber("height", HeightMetres);
        if (storeys is null || storeyName is null) return null;

        BuiltStorey? storey = storeys.FirstOrDefault(built => built.Storey.Name.Value == storeyName);
        if (storey is null)
        {
            if (areComplete)
                problems.Error(
                    row.PlaceOf("storey"),
                    $"no storey is called {KnownNames.Quote(storeyName)}",
                    () => KnownNames.Help(storeyName, [.. storeys.Select(built => built.Storey.Name.Value)], "storeys"));
            return null;
        }

        if (xMetres is { } x && yMetres is { } y) problems.Spots.Add(row.Range.From, row.Range.To, storey.Storey.Name, PlanPoint.FromMetres(x, y));
        if (heightMetres is { } height && !IsWithin(row, storey.Storey, height)) heightMetres = null;
        if (xMetres is null || yMetres is null) return null;
        if (Settle(row, storey, PlanPoint.FromMetres(xMetres.Value, yMetres.Value), room) is not { } settled || heightMetres is null) return null;
        return new(storey.Storey.Name, settled.Point, heightMetres.Value, settled.Room);
    }

    private bool IsWithin(RowReader row, Storey storey, double heightMetres)
    {
        if (heightMetres >= 0 && heightMetres <= storey.CeilingMetres) return true;
        string side = heightMetres < 0 ? "below the floor" : "above the ceiling";
        string message = FormattableString.Invariant($"height is {heightMetres}, {side} of {KnownNames.Quote(storey.Name.Value)}");
        problems.Error(
            row.PlaceOf("height"),
            message,
            FormattableString.Invariant($"it must be 0 to {storey.CeilingMetres} m above the floor of its storey"));
        return false;
    }

    private (PlanPoint Point, RoomName? Room)? Settle(RowReader row, BuiltStorey storey, PlanPoint point, string? stated)
    {
        bool isOutdoors = Outdoors.Equals(stated, StringComparison.OrdinalIgnoreCase) && !storey.RoomNames.Contains(stated!);
        if (stated is not null && !isOutdoors && !storey.RoomNames.Contains(stated))
        {
            problems.Error(
                row.PlaceOf("room"),
                $"no room of storey {KnownNames.Quote(storey.Storey.Name.Value)} is called {KnownNames.Quote(stated)}",
                () => HelpForRoom(storey, stated));
            return null;
        }

        // Where something is wrong with the storey itself, its rooms decide nothing.
        if (!storey.IsSound) return (point, stated is null || isOutdoors ? null : new RoomName(stated));
        if (isOutdoors) return ConfirmOutdoors(row, storey.Storey, point);
        if (storey.RoomNames.IsEmpty) return (point, null);
        return stated is null ? FindRoom(row, storey.Storey, point) : Confirm(row, storey.Storey, point, new(stated));
    }

    private string HelpForRoom(BuiltStorey storey, string stated) =>
        storeys!.FirstOrDefault(other => other.RoomNames.Contains(stated)) is { } elsewhere
            ? $"{KnownNames.Quote(stated)} is on storey {KnownNames.Quote(elsewhere.Storey.Name.Value)}"
            : KnownNames.Help(stated, storey.RoomNames, "rooms");

    private (PlanPoint Point, RoomName? Room)? ConfirmOutdoors(RowReader row, Storey storey, PlanPoint point)
    {
        if (storey.Rooms.FirstOrDefault(candidate => candidate.Outline.Contains(point)) is not { } room) return (point, null);
        string where = room.Outline.Locate(PathPoint.At(point)) == Location.Inside ? "in" : "on a wall of";
        problems.Error(
            row.PlaceOf("room"),
            $"the point {point} lies {where} {KnownNames.Quote(room.Name.Value)}, not outdoors",
            "put the point outside, or name the room");
        return null;
    }

    private (PlanPoint Point, RoomName? Room)? Confirm(RowReader row, Storey storey, PlanPoint point, RoomName stated)
    {
        Room room = storey.Rooms.Single(candidate => candidate.Name == stated);
        switch (room.Outline.Locate(PathPoint.At(point)))
        {
            case Location.Inside: return (point, stated);
            case Location.OnOutline: return MoveInto(row, room, point);
            default:
                Room? other = storey.RoomAt(point);
                string actual = other is null ? "outside every room" : $"in {KnownNames.Quote(other.Name.Value)}";
                string outdoors = other is null ? $", or write {KnownNames.Quote(Outdoors)} as its room" : "";
                problems.Error(
                    row.PlaceOf("room"),
                    $"the point {point} lies {actual}, not in {KnownNames.Quote(stated.Value)}",
                    "put the point or the room right" + outdoors);
                return null;
        }
    }

    private (PlanPoint Point, RoomName? Room)? FindRoom(RowReader row, Storey storey, PlanPoint point)
    {
        Room[] rooms = [.. storey.Rooms.Where(room => room.Outline.Contains(point))];
        switch (rooms)
        {
            case []:
                PlanPoint[] corners = [.. storey.Rooms.SelectMany(room => room.Outline.Corners)];
                PlanPoint least = new(corners.Min(corner => corner.X), corners.Min(corner => corner.Y));
                PlanPoint most = new(corners.Max(corner => corner.X), corners.Max(corner => corner.Y));
                problems.Error(
                    row.PlaceOf("x"),
                    $"the point {point} lies outside every room",
                    $"the rooms of {KnownNames.Quote(storey.Name.Value)} lie between {least} and {most}; if it hangs outside, write {KnownNames.Quote(Outdoors)} as its room");
                return null;
            case [var room]:
                return room.Outline.Locate(PathPoint.At(point)) == Location.Inside ? (point, room.Name) : MoveInto(row, room, point);
            default:
                string names = string.Join(" or ", rooms.Select(room => KnownNames.Quote(room.Name.Value)));
                problems.Error(
                    row.PlaceOf("x"),
                    $"the point {point} lies on a wall between rooms",
                    $"say in the column \"room\" which side it is on: {names}");
                return null;
        }
    }

    private (PlanPoint Point, RoomName? Room)? MoveInto(RowReader row, Room room, PlanPoint point)
    {
        if (OffWall.Move(room.Outline, point) is { } moved)
        {
            problems.Notice(
                row.PlaceOf("x"),
                $"the point {point} lies on a wall of {KnownNames.Quote(room.Name.Value)}",
                $"it is moved into the room, to {moved}");
            return (moved, room.Name);
        }

        problems.Error(
            row.PlaceOf("x"),
            $"the point {point} lies on a wall of {KnownNames.Quote(room.Name.Value)}",
            "move it into the room");
        return null;
    }
}
