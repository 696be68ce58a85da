using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>A straight piece of wall between two joints while a storey is being built.</summary>
/// <param name="start">The end with the smaller x, or the smaller y of an upright one.</param>
/// <param name="end">The other end.</param>
internal sealed class WallPiece(PlanPoint start, PlanPoint end)
{
    public PlanPoint Start { get; private set; } = start;

    public PlanPoint End { get; private set; } = end;

    /// <summary>The room on the left of the way from start to end, or null.</summary>
    public Room? Left { get; set; }

    /// <summary>The room on the right of the way from start to end, or null.</summary>
    public Room? Right { get; set; }

    /// <summary>What a person calls it; null until named.</summary>
    public string? Name { get; set; }

    /// <summary>What it is built of; null until stated.</summary>
    public ConstructionName? Construction { get; set; }

    public List<Opening> Openings { get; } = [];

    public double LengthMetres => Start.DistanceMetresTo(End);

    /// <summary>The rooms that it bounds, the one listed first first.</summary>
    public ImmutableArray<RoomName> RoomsIn(IReadOnlyList<Room> listed) =>
        [.. listed.Where(room => room == Left || room == Right).Select(room => room.Name)];

    public bool IsInner => Left is not null && Right is not null;

    public bool Bounds(RoomName room) => Left?.Name == room || Right?.Name == room;

    /// <summary>The two ends of a stretch in the order that a piece has them.</summary>
    public static (PlanPoint Start, PlanPoint End) InOrder(PlanPoint a, PlanPoint b) =>
        a.X < b.X || (a.X == b.X && a.Y < b.Y) ? (a, b) : (b, a);

    /// <summary>The direction on the plan that faces away from one of its rooms, not of length 1.</summary>
    public (double Dx, double Dy) AwayFrom(RoomName room)
    {
        double dx = End.X - (double)Start.X, dy = End.Y - (double)Start.Y;
        return Left?.Name == room ? (dy, -dx) : (-dy, dx);
    }

    /// <summary>Takes in the next piece along the same straight line when nothing but a joint tells the two apart.</summary>
    public bool TryExtendBy(WallPiece next)
    {
        bool isSame = Left == next.Left && Right == next.Right && Name == next.Name && Construction == next.Construction;
        if (!isSame || End != next.Start || Predicates.SideOf(Start, End, next.End) != Side.On) return false;
        End = next.End;
        return true;
    }
}
