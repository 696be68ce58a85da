using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Polygonize;

namespace MeshSim.Files.Importing.Lines;

/// <summary>What walls enclose.</summary>
/// <param name="Rooms">Outlines, lowest first, then leftmost.</param>
/// <param name="Small">Outlines too small for a room: shafts, the inside of thick walls.</param>
/// <param name="Holed">Outlines with an island in them, which a room cannot have.</param>
/// <param name="FreeEnds">Where walls end without meeting another.</param>
internal sealed record EnclosedRooms(
    ImmutableArray<ImmutableArray<PlanPoint>> Rooms,
    ImmutableArray<ImmutableArray<PlanPoint>> Small,
    ImmutableArray<ImmutableArray<PlanPoint>> Holed,
    ImmutableArray<WallPart> FreeEnds);

/// <summary>Finds rooms where walls close around them.</summary>
internal static class RoomFinding
{
    /// <summary>What is smaller is no room, m²: a person cannot turn around in it. Assumed.</summary>
    public const double SmallestSquareMetres = 0.8;

    /// <summary>Finds the rooms that pieces of wall enclose.</summary>
    public static EnclosedRooms Find(IReadOnlyList<WallPart> parts)
    {
        Polygonizer polygonizer = new();
        foreach (WallPart part in parts) polygonizer.Add(new LineString([CoordinateOf(part.Start), CoordinateOf(part.End)]));
        List<NetTopologySuite.Geometries.Polygon> polygons = [.. polygonizer.GetPolygons().Cast<NetTopologySuite.Geometries.Polygon>()];

        ILookup<int, ImmutableArray<PlanPoint>> byKind = polygons
            .Select(polygon => (Kind: KindOf(polygon), Corners: CornersOf(polygon.ExteriorRing)))
            .OrderBy(room => room.Corners.Min(corner => corner.Y))
            .ThenBy(room => room.Corners.Min(corner => corner.X))
            .ToLookup(room => room.Kind, room => room.Corners);
        return new([.. byKind[0]], [.. byKind[1]], [.. byKind[2]], [.. FreeEndsOf(parts)]);
    }

    private static int KindOf(NetTopologySuite.Geometries.Polygon polygon)
    {
        const double SquareStepsPerSquareMetre = (double)Lattice.StepsPerMetre * Lattice.StepsPerMetre;
        return polygon.NumInteriorRings > 0 ? 2 : polygon.Area < SmallestSquareMetres * SquareStepsPerSquareMetre ? 1 : 0;
    }

    private static IEnumerable<WallPart> FreeEndsOf(IReadOnlyList<WallPart> parts)
    {
        Dictionary<PlanPoint, int> meeting = parts.SelectMany(part => new[] { part.Start, part.End }).CountBy(end => end).ToDictionary();
        foreach (WallPart part in parts)
        {
            if (meeting[part.Start] == 1) yield return part with { Start = part.End, End = part.Start };
            if (meeting[part.End] == 1) yield return part;
        }
    }

    // Lattice steps are whole numbers, so every coordinate comes back as it went in.
    private static Coordinate CoordinateOf(PlanPoint point) => new(point.X, point.Y);

    private static ImmutableArray<PlanPoint> CornersOf(LineString ring) =>
        [.. ring.Coordinates.Skip(1).Select(corner => new PlanPoint((int)corner.X, (int)corner.Y))];
}
