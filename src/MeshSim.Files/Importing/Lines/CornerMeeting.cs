namespace MeshSim.Files.Importing.Lines;

/// <summary>
/// Lengthens centre lines that were found between faces until they meet: inner faces end at the inner corner, and a wall that
/// leaves another one ends at that one's face.
/// </summary>
internal static class CornerMeeting
{
    /// <summary>Centre lines whose ends lie on each other's lines.</summary>
    /// <param name="centres">Centre lines with their thickness.</param>
    /// <param name="snapMetres">What lies nearer was meant to meet, m.</param>
    public static List<WallStretch> Meet(IReadOnlyList<WallStretch> centres, double snapMetres)
    {
        // Every end looks at the lines as they were found, so that the order makes no difference.
        return [.. centres.Select(wall => wall with { Start = EndOf(wall, isStart: true, centres, snapMetres), End = EndOf(wall, isStart: false, centres, snapMetres) })];
    }

    private static DrawnPoint EndOf(WallStretch wall, bool isStart, IReadOnlyList<WallStretch> centres, double snapMetres)
    {
        double end = isStart ? 0 : wall.LengthMetres, best = double.PositiveInfinity;
        DrawnPoint found = isStart ? wall.Start : wall.End;
        foreach (WallStretch other in centres)
        {
            if (other == wall || wall.MeetsAt(other) is not { } at) continue;
            double reach = (((wall.ThicknessMetres ?? 0) + (other.ThicknessMetres ?? 0)) / 2 / wall.SineTo(other)) + snapMetres;
            double distance = Math.Abs(at - end), along = other.Along(wall.At(at));
            bool isOnOther = along >= -reach && along <= other.LengthMetres + reach;
            if (!isOnOther || distance > reach || distance >= best) continue;
            best = distance;
            found = wall.At(at);
        }

        return found;
    }
}
