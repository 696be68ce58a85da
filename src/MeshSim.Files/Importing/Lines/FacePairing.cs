namespace MeshSim.Files.Importing.Lines;

/// <summary>What pairing gave.</summary>
/// <param name="Centres">Centre lines with their thickness.</param>
/// <param name="Single">Parts of faces that found no second one, longest first within their shape's order.</param>
/// <param name="Caps">How many short parts across the end of a wall were met: they are no faces, and nothing is lost with them.</param>
internal sealed record PairedFaces(List<WallStretch> Centres, List<WallStretch> Single, int Caps);

/// <summary>
/// Finds the two faces of each wall: of all parallel lines near enough to each other the nearest pair first, each part of a line
/// once. A wall is at least as long as it is thick; what is shorter is a reveal, not a wall.
/// </summary>
internal static class FacePairing
{
    /// <summary>Faces nearer than this are one line drawn twice, m.</summary>
    public const double ThinnestMetres = 0.02;

    /// <summary>Sine of the largest angle between two faces of one wall: 1°, what a drawing made by hand is good for. Assumed.</summary>
    private const double MostSine = 0.0175;

    /// <summary>Pairs the faces of walls.</summary>
    /// <param name="faces">All faces of one storey, in the drawing's order.</param>
    public static PairedFaces Pair(IReadOnlyList<WallStretch> faces)
    {
        List<(double From, double To)>[] free = [.. faces.Select(face => new List<(double, double)> { (0, face.LengthMetres) })];
        List<WallStretch> centres = [];
        foreach ((int first, int second, double _) in CandidatesOf(faces)) Take(faces, free, first, second, centres);

        List<WallStretch> single = [];
        int caps = 0;
        for (int i = 0; i < faces.Count; i++)
        {
            foreach ((double from, double to) in free[i])
            {
                WallStretch part = faces[i] with { Start = faces[i].At(from), End = faces[i].At(to) };
                if (part.LengthMetres <= faces[i].Rule.ThickestMetres) caps++;
                else single.Add(part);
            }
        }

        return new(centres, single, caps);
    }

    private static IEnumerable<(int First, int Second, double Distance)> CandidatesOf(IReadOnlyList<WallStretch> faces)
    {
        List<(int First, int Second, double Distance)> pairs = [];
        for (int i = 0; i < faces.Count; i++)
        {
            for (int j = i + 1; j < faces.Count; j++)
            {
                if (faces[i].SineTo(faces[j]) > MostSine) continue;
                double distance = DistanceMetres(faces[i], faces[j]);
                if (distance >= ThinnestMetres && distance <= Math.Min(faces[i].Rule.ThickestMetres, faces[j].Rule.ThickestMetres)) pairs.Add((i, j, distance));
            }
        }

        // Tenths of a millimetre: of equal distances the drawing's order decides, not the last bit.
        return pairs.OrderBy(pair => Math.Round(pair.Distance, 4)).ThenBy(pair => pair.First).ThenBy(pair => pair.Second);
    }

    private static double DistanceMetres(WallStretch a, WallStretch b)
    {
        WallStretch longer = a.LengthMetres >= b.LengthMetres ? a : b, shorter = longer == a ? b : a;
        return Math.Abs(longer.Across(shorter.Start.Towards(shorter.End, 0.5)));
    }

    private static void Take(IReadOnlyList<WallStretch> faces, List<(double From, double To)>[] free, int first, int second, List<WallStretch> centres)
    {
        WallStretch one = faces[first], other = faces[second];
        double otherStart = one.Along(other.Start), otherEnd = one.Along(other.End), sign = otherEnd >= otherStart ? 1 : -1;
        foreach ((double from, double to) in free[first].ToArray())
        {
            foreach ((double freeFrom, double freeTo) in free[second].ToArray())
            {
                double a = otherStart + (sign * freeFrom), b = otherStart + (sign * freeTo);
                double low = Math.Max(from, Math.Min(a, b)), high = Math.Min(to, Math.Max(a, b));
                double thickness = DistanceMetres(one, other);
                if (high - low < thickness) continue;
                DrawnPoint start = Middle(one, other, low), end = Middle(one, other, high);
                centres.Add(one with { Start = start, End = end, ThicknessMetres = thickness });
                Remove(free[first], low, high);
                Remove(free[second], Math.Min((low - otherStart) * sign, (high - otherStart) * sign), Math.Max((low - otherStart) * sign, (high - otherStart) * sign));
                Take(faces, free, first, second, centres); // What is left of both may overlap elsewhere.
                return;
            }
        }
    }

    private static DrawnPoint Middle(WallStretch one, WallStretch other, double along)
    {
        DrawnPoint here = one.At(along);
        return here.Towards(other.At(other.Along(here)), 0.5);
    }

    private static void Remove(List<(double From, double To)> free, double low, double high)
    {
        const double Nothing = 1e-6; // A micrometre: rounding, no part of a face.
        (double From, double To)[] before = [.. free];
        free.Clear();
        foreach ((double from, double to) in before)
        {
            if (Math.Min(low, to) - from > Nothing) free.Add((from, Math.Min(low, to)));
            if (to - Math.Max(high, from) > Nothing) free.Add((Math.Max(high, from), to));
        }
    }
}
