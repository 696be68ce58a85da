namespace MeshSim.Files.Importing.Lines;

/// <summary>
/// Joins stretches in line with each other where the wall goes on although the drawing leaves a gap: a door or window stands in
/// it, or another wall leaves through it.
/// </summary>
internal static class GapBridging
{
    /// <summary>Joins what belongs together.</summary>
    /// <param name="walls">Stretches of walls.</param>
    /// <param name="openings">What stands in walls.</param>
    /// <param name="snapMetres">What lies nearer was meant to meet, m.</param>
    public static List<WallStretch> Bridge(IEnumerable<WallStretch> walls, IReadOnlyList<DrawnShape> openings, double snapMetres)
    {
        List<WallStretch> all = [.. walls];
        for (int i = 0; i < all.Count; i++)
        {
            // What was joined may reach the next one, so the search for this one begins again.
            for (int j = i + 1; j < all.Count; j++)
            {
                if (Joined(all[i], all[j], all, openings, snapMetres) is not { } joined) continue;
                all[i] = joined;
                all.RemoveAt(j);
                j = i;
            }
        }

        return all;
    }

    private static WallStretch? Joined(WallStretch one, WallStretch other, List<WallStretch> all, IReadOnlyList<DrawnShape> openings, double snapMetres)
    {
        if (one.Rule != other.Rule || Math.Abs((one.ThicknessMetres ?? 0) - (other.ThicknessMetres ?? 0)) > snapMetres) return null;
        double a = one.Along(other.Start), b = one.Along(other.End), low = Math.Min(a, b), high = Math.Max(a, b);
        if (Math.Max(Math.Abs(one.Across(other.Start)), Math.Abs(one.Across(other.End))) > snapMetres) return null;

        (double from, double to) = low > one.LengthMetres ? (one.LengthMetres, low) : (high, 0);
        if (to < from || (to - from > snapMetres && !GoesOn(one, from, to, all, openings, snapMetres))) return null;
        return one with
        {
            Start = low < 0 ? (a < b ? other.Start : other.End) : one.Start,
            End = high > one.LengthMetres ? (a < b ? other.End : other.Start) : one.End,
        };
    }

    private static bool GoesOn(WallStretch wall, double from, double to, List<WallStretch> all, IReadOnlyList<DrawnShape> openings, double snapMetres)
    {
        double thickness = wall.ThicknessMetres ?? 0;
        foreach (DrawnShape opening in openings)
        {
            // The jambs may stand a little within the walls on either side, or short of them.
            DrawnPoint[] near = [.. opening.Points.Where(point => Math.Abs(wall.Across(point)) <= (thickness / 2) + (2 * snapMetres))];
            if (near.Length > 0 && near.Min(wall.Along) <= from + (2 * snapMetres) && near.Max(wall.Along) >= to - (2 * snapMetres)) return true;
        }

        return all.Exists(other =>
            other.ThicknessMetres is { } other2 && to - from <= (other2 / wall.SineTo(other)) + (2 * snapMetres)
            && wall.MeetsAt(other) is { } at && at >= from - snapMetres && at <= to + snapMetres
            && other.DistanceMetresTo(wall.At(at)) <= (thickness / 2) + other2 + snapMetres);
    }
}
