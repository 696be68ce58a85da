using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>Checks a floor structure and its stairwells.</summary>
internal static class FloorChecks
{
    // Middles of stretches are asked about at this fineness of their edge; the question itself is answered exactly.
    private const long SharesPerEdge = 1L << 40;

    /// <summary>The floor structure of a description, sound stairwells only; null when it has none.</summary>
    public static FloorStructure? Floor(StoreyDescription description, StoreyOutlines outlines, Findings findings)
    {
        if (description.Floor is not { } floor) return null;
        if (!(floor.ThicknessMetres > 0))
            findings.Wrong(
                floor.Source,
                Aspect.Thickness,
                $"the floor structure of \"{description.Name}\" is {floor.ThicknessMetres} m thick",
                $"more than 0 m, such as 0.25");

        var sound = ImmutableArray.CreateBuilder<Stairwell>();
        foreach (StairwellDescription stairwell in floor.Stairwells)
            if (ProperStairwell(stairwell, description, outlines, findings) is { } outline) sound.Add(new Stairwell(outline));
        return new(floor.Construction, floor.ThicknessMetres, sound.ToImmutable());
    }

    private static Polygon? ProperStairwell(StairwellDescription stairwell, StoreyDescription description, StoreyOutlines outlines, Findings findings)
    {
        string label = $"the stairwell of \"{description.Name}\"";
        if (RoomChecks.ProperOutline(stairwell.Source, label, stairwell.Corners, findings) is not { } corners) return null;
        if (description.Rooms.IsEmpty || IsWithin(corners, outlines)) return new Polygon([.. corners]);

        // Drawn a little past the walls around it, as tape measures do.
        var lines = outlines.Rooms.Select(room => new PlanLine(default, $"\"{room.Name}\"", isClosed: true, room.Outline.Corners))
            .Append(new PlanLine(stairwell.Source, label, isClosed: true, corners)).ToList();
        var moves = new Findings();
        LineSnapping.Snap(lines, moves);
        List<PlanPoint> snapped = lines[^1].Corners;
        if (Outlines.FirstSelfCrossing(snapped) is null && IsWithin(snapped, outlines))
        {
            findings.Notices.AddRange(moves.Notices.Where(move => move.Source == stairwell.Source));
            return new Polygon([.. snapped]);
        }

        // A room with a problem of its own leaves a gap that is not the stairwell's fault.
        if (outlines.Rooms.Count == description.Rooms.Length)
            findings.Wrong(stairwell.Source, Aspect.Outline, $"{label} reaches outside the rooms of that storey", $"corners within its rooms");
        return null;
    }

    /// <summary>Whether an outline lies in the closed union of the rooms: its edges do, and no outer edge of a room runs within it.</summary>
    private static bool IsWithin(List<PlanPoint> corners, StoreyOutlines outlines)
    {
        var outline = new Polygon([.. corners]);
        Polygon[] rooms = [.. outlines.Rooms.Select(room => room.Outline)];
        foreach ((PlanPoint a, PlanPoint b) in outline.Edges)
            if (MiddlesOf(a, b, rooms).Any(middle => Array.TrueForAll(rooms, room => room.Locate(middle) == Location.Outside))) return false;

        IEnumerable<PathPoint> edgesWithin =
            from edge in rooms.SelectMany(room => room.Edges)
            from middle in MiddlesOf(edge.Start, edge.End, rooms)
            where outline.Locate(middle) == Location.Inside
            select middle;
        return edgesWithin.All(middle => rooms.Count(room => room.Locate(middle) != Location.Outside) > 1);
    }

    /// <summary>The middle of every stretch into which the edges of the rooms cut the way from a to b.</summary>
    private static IEnumerable<PathPoint> MiddlesOf(PlanPoint a, PlanPoint b, Polygon[] rooms)
    {
        var cuts = new SortedSet<long> { 0, SharesPerEdge };
        foreach ((PlanPoint c, PlanPoint d) in rooms.SelectMany(room => room.Edges))
        {
            if (!Predicates.Touch(a, b, c, d)) continue;
            double atA = Predicates.SignedArea(c, d, a), atB = Predicates.SignedArea(c, d, b);
            IEnumerable<double> shares = atA == atB ? [c.ShareAlong(a, b), d.ShareAlong(a, b)] : [atA / (atA - atB)];
            cuts.UnionWith(shares.Select(share => (long)(Math.Clamp(share, 0, 1) * SharesPerEdge)));
        }

        return cuts.Zip(cuts.Skip(1), (low, high) => new PathPoint(new(a, 0), new(b, 0), (low + high) / 2, SharesPerEdge));
    }
}
