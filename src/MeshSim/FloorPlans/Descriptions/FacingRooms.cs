using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>
/// Notes rooms that face each other across a gap no wider than a wall. Rooms drawn by their clear measures leave such gaps, and
/// what is one wall would silently count as two outer ones.
/// </summary>
internal static class FacingRooms
{
    /// <summary>Widest gap that may stand for one wall, m. Assumed: the thickest wall that is common between two rooms.</summary>
    public const double WidestGapMetres = 0.3;

    private const string Advice =
        "rooms are drawn along the centre lines of walls, so these count as two outer walls: let the rooms share an edge where one wall stands";

    /// <summary>Notes each pair of rooms that face each other over a longer stretch than they are apart.</summary>
    /// <param name="description">Where the rooms were described.</param>
    /// <param name="pieces">The walls that follow from them.</param>
    /// <param name="rooms">The rooms in the order listed.</param>
    /// <param name="findings">Takes the notices.</param>
    public static void Note(StoreyDescription description, IEnumerable<WallPiece> pieces, IReadOnlyList<Room> rooms, Findings findings)
    {
        WallPiece[] outer = [.. pieces.Where(piece => piece.Left is null != piece.Right is null)];
        var gaps = from i in Enumerable.Range(0, outer.Length)
                   from j in Enumerable.Range(i + 1, outer.Length - i - 1)
                   where RoomOf(outer[i]) != RoomOf(outer[j])
                   let gap = GapBetween(outer[i], outer[j])
                   where gap is not null
                   group gap.Value by (RoomOf(outer[i]), RoomOf(outer[j]));

        foreach (var pair in gaps)
        {
            double gapMetres = pair.Min(gap => gap.WidthMetres), lengthMetres = pair.Sum(gap => gap.LengthMetres);
            if (lengthMetres <= gapMetres) continue;
            (Room first, Room second) = pair.Key;
            findings.Note(
                description.Rooms.First(room => room.Name == second.Name).Source,
                $"rooms \"{first.Name}\" and \"{second.Name}\" face each other {gapMetres:0.####} m apart over {lengthMetres:0.##} m; {Advice}");
        }
    }

    private static Room RoomOf(WallPiece outer) => outer.Left ?? outer.Right!;

    /// <summary>The stretch over which two outer walls have nothing but a narrow gap between their outsides; null when there is none.</summary>
    private static (double WidthMetres, double LengthMetres)? GapBetween(WallPiece wall, WallPiece other)
    {
        (double dx, double dy) = wall.AwayFrom(RoomOf(wall).Name);
        (double otherDx, double otherDy) = other.AwayFrom(RoomOf(other).Name);
        if ((dx * otherDx) + (dy * otherDy) >= 0) return null;

        double start = other.Start.ShareAlong(wall.Start, wall.End), end = other.End.ShareAlong(wall.Start, wall.End);
        double low = Math.Clamp(start, 0, 1), high = Math.Clamp(end, 0, 1);
        if (low == high) return null;

        double atStart = OutsideMetres(wall, other.Start), atEnd = OutsideMetres(wall, other.End);
        double atLow = atStart + ((low - start) / (end - start) * (atEnd - atStart));
        double atHigh = atStart + ((high - start) / (end - start) * (atEnd - atStart));
        bool isNarrow = Math.Min(atLow, atHigh) > 0 && Math.Max(atLow, atHigh) <= WidestGapMetres + Lattice.ToMetres(1);
        return isNarrow ? (Math.Min(atLow, atHigh), Math.Abs(high - low) * wall.LengthMetres) : null;
    }

    /// <summary>How far a point lies from the line of an outer wall, to its outside, m.</summary>
    private static double OutsideMetres(WallPiece wall, PlanPoint point)
    {
        double leftMetres = Lattice.ToMetres(Predicates.SignedArea(wall.Start, wall.End, point)) / (wall.LengthMetres * Lattice.StepsPerMetre);
        return wall.Left is null ? leftMetres : -leftMetres;
    }
}
