using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Devices;

/// <summary>
/// Mains outlets where none is listed: along the walls of every room, evenly, at skirting height. Distances are common
/// practice of house wiring, no source; that an outlet sits at exactly these places is assumed.
/// </summary>
public static class AssumedOutlets
{
    /// <summary>Height above the floor, m.</summary>
    public const double HeightMetres = 0.3;

    /// <summary>Greatest distance between neighbours along one wall, m.</summary>
    public const double SpacingMetres = 2.0;

    /// <summary>Distance from the centre line of the wall into the room, m.</summary>
    public const double OffWallMetres = 0.05;

    /// <summary>Walls shorter than this get none, m.</summary>
    public const double ShortestWallMetres = 0.8;

    /// <summary>Rooms narrower than this get none, m.</summary>
    public const double NarrowestRoomMetres = 1.0;

    /// <summary>Free wall kept on either side of an opening that comes down to the outlet, m.</summary>
    public const double ClearOfOpeningMetres = 0.15;

    /// <summary>How far an outlet is moved aside at a time when its place is taken, m.</summary>
    private const double StepAsideMetres = 0.25;

    /// <summary>Outlets for every room of a building, room by room, anticlockwise from its first corner.</summary>
    public static ImmutableArray<Outlet> Along(FloorPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);

        var outlets = ImmutableArray.CreateBuilder<Outlet>();
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (Storey storey in plan.Storeys)
        {
            foreach (Room room in storey.Rooms.Where(room => WidthMetres(room.Outline) >= NarrowestRoomMetres))
            {
                string prefix = string.Join('-', room.Name.Value.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
                int number = 0;
                foreach (PlanPoint point in PlacesIn(storey, room))
                {
                    string id;
                    do id = FormattableString.Invariant($"{prefix}-{++number}");
                    while (!taken.Add(id));
                    outlets.Add(new Outlet
                    {
                        Id = new(id),
                        Storey = storey.Name,
                        Point = point,
                        HeightMetres = HeightMetres,
                        Room = room.Name,
                        IsAssumed = true,
                    });
                }
            }
        }

        return outlets.ToImmutable();
    }

    private static IEnumerable<PlanPoint> PlacesIn(Storey storey, Room room)
    {
        IEnumerable<PlanPoint> corners = room.Outline.TwiceSignedArea > 0 ? room.Outline.Corners : room.Outline.Corners.Reverse();
        var outline = new Polygon([.. corners]);
        foreach ((PlanPoint a, PlanPoint b) in outline.Edges)
        {
            double lengthMetres = a.DistanceMetresTo(b);
            if (lengthMetres < ShortestWallMetres) continue;
            int count = (int)Math.Ceiling(lengthMetres / SpacingMetres);
            double sectionMetres = lengthMetres / count;
            for (int i = 0; i < count; i++)
                if (FreePlace(storey, room, (a, b), (i + 0.5) * sectionMetres, sectionMetres / 2) is { } place) yield return place;
        }
    }

    /// <summary>The free place nearest to the middle of a section of wall, the far side of the middle first; null when all is taken.</summary>
    private static PlanPoint? FreePlace(Storey storey, Room room, (PlanPoint A, PlanPoint B) edge, double middleMetres, double reachMetres)
    {
        for (int step = 0; step * StepAsideMetres < reachMetres; step++)
        {
            PlanPoint ahead = PlaceAt(edge.A, edge.B, middleMetres + (step * StepAsideMetres));
            if (IsFree(storey, room, ahead)) return ahead;
            PlanPoint behind = PlaceAt(edge.A, edge.B, middleMetres - (step * StepAsideMetres));
            if (IsFree(storey, room, behind)) return behind;
        }

        return null;
    }

    private static PlanPoint PlaceAt(PlanPoint a, PlanPoint b, double alongMetres)
    {
        double lengthMetres = a.DistanceMetresTo(b);
        double ux = (b.XMetres - a.XMetres) / lengthMetres, uy = (b.YMetres - a.YMetres) / lengthMetres;
        return PlanPoint.FromMetres(a.XMetres + (ux * alongMetres) - (uy * OffWallMetres), a.YMetres + (uy * alongMetres) + (ux * OffWallMetres));
    }

    private static bool IsFree(Storey storey, Room room, PlanPoint place) =>
        room.Outline.Locate(PathPoint.At(place)) == Location.Inside
        && !storey.Walls.Any(wall => wall.Openings.Any(opening => IsBy(place, wall, opening)))
        && !storey.Objects.Any(item => item.BaseMetres <= HeightMetres && item.Footprint.Contains(place))
        && storey.Floor?.Stairwells.Any(stairwell => stairwell.Outline.Contains(place)) != true;

    private static bool IsBy(PlanPoint place, Wall wall, Opening opening)
    {
        if (opening.SillMetres > HeightMetres || place.DistanceMetresTo(wall.Start, wall.End) > 2 * OffWallMetres) return false;
        double alongMetres = place.ShareAlong(wall.Start, wall.End) * wall.LengthMetres;
        return opening.OffsetMetres - ClearOfOpeningMetres < alongMetres
            && alongMetres < opening.OffsetMetres + opening.WidthMetres + ClearOfOpeningMetres;
    }

    /// <summary>The least distance between two lines, both along one of its edges, that hold the whole outline between them.</summary>
    private static double WidthMetres(Polygon outline) => outline.Edges.Min(edge =>
    {
        double lengthMetres = edge.Start.DistanceMetresTo(edge.End);
        long[] areas = [.. outline.Corners.Select(corner => Predicates.SignedArea(edge.Start, edge.End, corner))];
        return Lattice.ToMetres(areas.Max() - areas.Min()) / (lengthMetres * Lattice.StepsPerMetre);
    });
}
