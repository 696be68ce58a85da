using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>
/// Turns divided outlines into wall pieces: a stretch that two rooms share becomes one piece with a room on either side, any
/// other a piece with a room on one side. Lines that run along a piece stand for it; others become pieces of their own.
/// </summary>
internal sealed class WallDerivation
{
    private readonly Dictionary<(PlanPoint Start, PlanPoint End), WallPiece> byEnds = [];

    /// <summary>All pieces: room by room, edge by edge, then those of lines.</summary>
    public List<WallPiece> Pieces { get; } = [];

    /// <summary>Adds the outline of a room. No other room may lie on the same side of one of its edges.</summary>
    /// <param name="room">The room.</param>
    /// <param name="corners">Its divided outline, anticlockwise.</param>
    public void AddRoom(Room room, IReadOnlyList<PlanPoint> corners)
    {
        for (int i = 0; i < corners.Count; i++)
        {
            (PlanPoint a, PlanPoint b) = (corners[i], corners[(i + 1) % corners.Count]);
            WallPiece piece = PieceBetween(a, b);
            if (piece.Start == a) piece.Left = room;
            else piece.Right = room;
        }
    }

    /// <summary>Adds a divided line, and gives the pieces that it stands for.</summary>
    public List<WallPiece> AddLine(IReadOnlyList<PlanPoint> corners) =>
        [.. Enumerable.Range(0, corners.Count - 1).Select(i => PieceBetween(corners[i], corners[i + 1]))];

    /// <summary>Names what has no name yet after its rooms: "hall | kitchen", or "kitchen, east"; a line by its ends.</summary>
    public static void NameAfterRooms(IEnumerable<WallPiece> pieces, IReadOnlyList<Room> rooms, double northDegrees)
    {
        foreach (WallPiece piece in pieces.Where(piece => piece.Name is null))
        {
            RoomName[] beside = [.. piece.RoomsIn(rooms)];
            piece.Name = beside.Length switch
            {
                0 => $"wall {piece.Start} to {piece.End}",
                1 => $"{beside[0]}, {MainSideOf(piece, beside[0], northDegrees)}",
                _ => $"{beside[0]} | {beside[1]}",
            };
        }
    }

    /// <summary>Joins pieces in line where no other wall meets them, so that every end of a piece is a corner or a joint.</summary>
    public static List<WallPiece> JoinStraight(IReadOnlyList<WallPiece> pieces)
    {
        var atEnd = pieces.SelectMany(piece => new[] { (Point: piece.Start, piece), (Point: piece.End, piece) })
            .ToLookup(item => item.Point, item => item.piece);
        var nextOf = new Dictionary<WallPiece, WallPiece>();
        var hasEarlier = new HashSet<WallPiece>();
        foreach (WallPiece piece in pieces)
        {
            WallPiece[] meeting = [.. atEnd[piece.End]];
            if (meeting.Length != 2) continue;
            WallPiece next = meeting[0] == piece ? meeting[1] : meeting[0];
            if (next.Start == piece.End) nextOf[piece] = next;
        }

        foreach (WallPiece first in pieces.OrderBy(piece => piece.Start.X).ThenBy(piece => piece.Start.Y))
        {
            if (hasEarlier.Contains(first)) continue;
            for (WallPiece last = first; nextOf.TryGetValue(last, out WallPiece? next) && first.TryExtendBy(next); last = next)
                hasEarlier.Add(next);
        }

        return [.. pieces.Where(piece => !hasEarlier.Contains(piece))];
    }

    private static string MainSideOf(WallPiece piece, RoomName room, double northDegrees)
    {
        (double dx, double dy) = piece.AwayFrom(room);
        return Compass.NameOf(Compass.MainSide(dx, dy, northDegrees));
    }

    private WallPiece PieceBetween(PlanPoint a, PlanPoint b)
    {
        (PlanPoint Start, PlanPoint End) ends = WallPiece.InOrder(a, b);
        if (byEnds.TryGetValue(ends, out WallPiece? piece)) return piece;
        piece = new WallPiece(ends.Start, ends.End);
        byEnds.Add(ends, piece);
        Pieces.Add(piece);
        return piece;
    }
}
