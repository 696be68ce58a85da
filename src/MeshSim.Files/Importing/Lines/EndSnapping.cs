namespace MeshSim.Files.Importing.Lines;

/// <summary>What snapping gave.</summary>
/// <param name="Walls">The stretches, ends moved.</param>
/// <param name="Moved">How many ends were moved, and the farthest of them.</param>
/// <param name="Lost">Stretches too short to be any after that.</param>
internal sealed record SnappedWalls(List<WallStretch> Walls, (int Count, double FarthestMetres) Moved, List<WallStretch> Lost);

/// <summary>Moves ends of walls that lie nearer to each other, or to another wall, than a tolerance.</summary>
internal static class EndSnapping
{
    /// <summary>Snaps ends to ends, in the drawing's order, then what still ends near a wall onto that wall.</summary>
    /// <param name="walls">The stretches.</param>
    /// <param name="toleranceMetres">What lies nearer was meant to meet, m.</param>
    public static SnappedWalls Snap(IReadOnlyList<WallStretch> walls, double toleranceMetres)
    {
        List<DrawnPoint> places = [];
        int[][] ends = [.. walls.Select(wall => new[] { PlaceOf(wall.Start, places, toleranceMetres), PlaceOf(wall.End, places, toleranceMetres) })];
        DrawnPoint[] moved = [.. places.Select((place, index) => OntoWall(place, index, walls, ends, places, toleranceMetres))];

        List<WallStretch> snapped = [], lost = [];
        int count = 0;
        double farthest = 0;
        for (int i = 0; i < walls.Count; i++)
        {
            WallStretch wall = walls[i] with { Start = moved[ends[i][0]], End = moved[ends[i][1]] };
            if (wall.Start == wall.End)
            {
                lost.Add(walls[i]);
                continue;
            }

            snapped.Add(wall);
            foreach (double distance in new[] { wall.Start.DistanceMetresTo(walls[i].Start), wall.End.DistanceMetresTo(walls[i].End) })
            {
                if (distance < LeastMoveMetres) continue;
                count++;
                farthest = Math.Max(farthest, distance);
            }
        }

        return new(snapped, (count, farthest), lost);
    }

    /// <summary>Half a lattice step: what moves less does not move.</summary>
    private const double LeastMoveMetres = 0.00005;

    private static int PlaceOf(DrawnPoint end, List<DrawnPoint> places, double toleranceMetres)
    {
        int nearest = -1;
        double least = toleranceMetres;
        for (int i = 0; i < places.Count; i++)
        {
            double distance = places[i].DistanceMetresTo(end);
            if (distance > least || (distance == least && nearest >= 0)) continue;
            (nearest, least) = (i, distance);
        }

        if (nearest >= 0) return nearest;
        places.Add(end);
        return places.Count - 1;
    }

    private static DrawnPoint OntoWall(
        DrawnPoint place, int index, IReadOnlyList<WallStretch> walls, int[][] ends, List<DrawnPoint> places, double toleranceMetres)
    {
        DrawnPoint best = place;
        double least = toleranceMetres;
        for (int i = 0; i < walls.Count; i++)
        {
            if (ends[i][0] == index || ends[i][1] == index || ends[i][0] == ends[i][1]) continue;
            WallStretch wall = walls[i] with { Start = places[ends[i][0]], End = places[ends[i][1]] };
            double along = wall.Along(place);
            if (along < 0 || along > wall.LengthMetres || Math.Abs(wall.Across(place)) >= least) continue;
            (least, best) = (Math.Abs(wall.Across(place)), wall.At(along));
        }

        return best;
    }
}
