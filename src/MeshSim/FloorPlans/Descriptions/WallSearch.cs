using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>What a search for a wall gives: its pieces, or, when there are none, why not and what there is.</summary>
/// <param name="Pieces">In the order of the storey; empty when there is no such wall.</param>
/// <param name="Wrong">Why there is none; empty when there is.</param>
/// <param name="Right">What there is instead.</param>
internal sealed record WallMatch(ImmutableArray<WallPiece> Pieces, string Wrong, string Right);

/// <summary>Finds the wall pieces that a person means.</summary>
internal sealed class WallSearch(IReadOnlyList<WallPiece> pieces, IReadOnlyList<Room> rooms, double northDegrees)
{
    /// <summary>The pieces at a place.</summary>
    public WallMatch Find(WallPlace place) => place switch
    {
        WallPlace.Between between => FindBetween(between.First, between.Second),
        WallPlace.SideOf side => FindSide(side.Room, side.Facing),
        WallPlace.Named named => FindNamed(named.Name),
        WallPlace.Line line => FindOn(line.Start, line.End),
        _ => throw new ArgumentException("unknown way to name a wall", nameof(place)),
    };

    private WallMatch FindBetween(RoomName first, RoomName second)
    {
        if (UnknownRoom(first) is { } noFirst) return noFirst;
        if (UnknownRoom(second) is { } noSecond) return noSecond;
        return Answer(
            piece => piece.Bounds(first) && piece.Bounds(second) && first != second,
            $"\"{first}\" and \"{second}\" share no wall",
            () => $"\"{first}\" shares a wall with {InWords(NeighboursOf(first), "no room")}");
    }

    private WallMatch FindSide(RoomName room, CompassSide facing)
    {
        if (UnknownRoom(room) is { } unknown) return unknown;
        return Answer(
            piece => piece.Bounds(room) && Faces(piece, room, facing),
            $"\"{room}\" has no wall that faces {Compass.NameOf(facing)}",
            () => $"its walls face {string.Join(", ", SidesOf(room))}");
    }

    private WallMatch FindNamed(string name) => Answer(
        piece => piece.Name == name,
        $"no wall is called \"{name}\"",
        () => $"the walls are {InWords(pieces.Select(piece => piece.Name ?? "").Where(known => known.Length > 0), "none")}");

    private WallMatch FindOn(PlanPoint start, PlanPoint end) => Answer(
        piece => Predicates.IsOn(start, end, piece.Start) && Predicates.IsOn(start, end, piece.End),
        $"no wall lies on the line {start} to {end}",
        () => $"a line that holds a wall from end to end");

    private WallMatch? UnknownRoom(RoomName name) => rooms.Any(room => room.Name == name)
        ? null
        : new([], $"no room of this storey is called \"{name}\"", $"the rooms are {InWords(rooms.Select(room => room.Name.Value), "none")}");

    private WallMatch Answer(Func<WallPiece, bool> isMeant, string wrong, Func<string> right)
    {
        ImmutableArray<WallPiece> found = [.. pieces.Where(isMeant)];
        return found.IsEmpty ? new([], wrong, right()) : new(found, "", "");
    }

    private bool Faces(WallPiece piece, RoomName room, CompassSide facing)
    {
        (double dx, double dy) = piece.AwayFrom(room);
        return Compass.Faces(dx, dy, northDegrees, facing);
    }

    private IEnumerable<string> NeighboursOf(RoomName room) =>
        from piece in pieces
        where piece.Bounds(room)
        from other in piece.RoomsIn(rooms)
        where other != room
        select other.Value;

    private IEnumerable<string> SidesOf(RoomName room) => Enum.GetValues<CompassSide>()
        .Where(side => (int)side % 2 == 0 && pieces.Any(piece => piece.Bounds(room) && Faces(piece, room, side)))
        .Select(Compass.NameOf);

    private static string InWords(IEnumerable<string> names, string none)
    {
        string[] distinct = [.. names.Distinct()];
        return distinct.Length == 0 ? none : string.Join(", ", distinct.Select(name => $"\"{name}\""));
    }
}
