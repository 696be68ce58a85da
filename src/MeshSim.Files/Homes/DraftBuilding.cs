using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Homes;

/// <summary>Gathers what could be placed, and finds each diagnostic's place on the plan.</summary>
internal static class DraftBuilding
{
    /// <summary>The draft of a home; null when nothing was made of its <c>home.yaml</c>.</summary>
    public static HomeDraft? Of(HomeDocument? document, IReadOnlyList<BuiltStorey>? storeys, IEnumerable<Device> devices, IEnumerable<Outlet> outlets, DiagnosticList problems)
    {
        if (document is null || storeys is null || storeys.Count == 0) return null;
        for (int i = 0; i < storeys.Count; i++) AddSpots(document.Storeys[i].Description, storeys[i].Storey, document.Places, problems.Spots);
        foreach (AccessPointDocument point in document.AccessPoints)
            problems.Spots.Add(point.Storey.Place with { Column = 1 }, point.HeightPlace with { Column = int.MaxValue }, new(point.Storey.Name), point.Point);

        return new()
        {
            Home = new()
            {
                Name = document.Name,
                Region = document.Region,
                FloorPlan = new([.. storeys.Select(storey => storey.Storey)]),
                Constructions = document.Constructions,
                Devices = [.. devices],
                Outlets = [.. outlets],
                Parameters = document.Parameters,
            },
            Unbuilt = [.. storeys.SelectMany((built, i) => UnbuiltIn(document.Storeys[i].Description, built.Storey))],
            Diagnostics = [.. problems.Sorted(Severity.Error).Concat(problems.Sorted(Severity.Notice)).Select(one => Placed(one, problems.Spots))],
        };
    }

    private static PlacedDiagnostic Placed(Diagnostic diagnostic, PlanSpots spots) =>
        spots.Find(diagnostic) is var (storey, point) ? new(diagnostic, storey, point) : new(diagnostic, null, null);

    private static IEnumerable<UnbuiltRoom> UnbuiltIn(StoreyDescription description, Storey built) =>
        description.Rooms
            .Where(room => !built.Rooms.Any(one => one.Name == room.Name) && room.Corners.Distinct().Count() >= 3)
            .Select(room => new UnbuiltRoom(description.Name, room.Name, room.Corners));

    private static void AddSpots(StoreyDescription storey, Storey built, DescribedPlaces places, PlanSpots spots)
    {
        foreach (RoomDescription room in storey.Rooms) Add(room.Source, Middle(room.Corners));
        foreach (WallDescription wall in storey.Walls) Add(wall.Source, PointOn(wall.Place, null));
        foreach (OpeningDescription opening in storey.Openings) Add(opening.Source, PointOn(opening.Place, opening));
        foreach (ObjectDescription thing in storey.Objects) Add(thing.Source, Middle(thing.Corners));
        foreach (StairwellDescription hole in storey.Floor?.Stairwells ?? []) Add(hole.Source, Middle(hole.Corners));

        void Add(SourceKey source, PlanPoint? point)
        {
            if (point is { } found) spots.Add(places.RangeOf(source).From, places.RangeOf(source).To, storey.Name, found);
        }

        PlanPoint? PointOn(WallPlace place, OpeningDescription? opening)
        {
            if (place is WallPlace.Line line) return Along(line.Start, line.End, opening);
            Wall? wall = built.Walls.FirstOrDefault(wall => wall.Openings.Any(one => one.Name == opening?.Name)) ?? place switch
            {
                WallPlace.Named named => built.Walls.FirstOrDefault(wall => wall.Name == named.Name),
                WallPlace.Between pair => built.Walls.FirstOrDefault(wall => wall.Rooms.Contains(pair.First) && wall.Rooms.Contains(pair.Second)),
                WallPlace.SideOf side => built.Walls.Where(wall => wall.Rooms.Contains(side.Room)).MaxBy(wall => Reach(wall, side)),
                _ => null,
            };
            return wall is not null ? Along(wall.Start, wall.End, opening) : null;
        }

        // How far the middle of a wall lies towards a side, seen from the origin: compared, not used.
        double Reach(Wall wall, WallPlace.SideOf side)
        {
            (double sin, double cos) = Math.SinCos(((45 * (int)side.Facing) + storey.NorthDegrees) * Math.PI / 180);
            PlanPoint middle = Middle([wall.Start, wall.End]);
            return (middle.XMetres * sin) + (middle.YMetres * cos);
        }
    }

    // As far along as the opening says, as long as that is on the wall.
    private static PlanPoint Along(PlanPoint start, PlanPoint end, OpeningDescription? opening)
    {
        double length = start.DistanceMetresTo(end);
        bool startsLeft = start.X < end.X || (start.X == end.X && start.Y < end.Y);
        double share = opening is null || length == 0 ? 0.5 : Math.Clamp((opening.OffsetMetres + (opening.WidthMetres / 2)) / length, 0, 1);
        if (!startsLeft) share = 1 - share;
        return new(start.X + (int)((end.X - (double)start.X) * share), start.Y + (int)((end.Y - (double)start.Y) * share));
    }

    private static PlanPoint Middle(ImmutableArray<PlanPoint> corners) => new(
        (int)(((long)corners.Min(p => p.X) + corners.Max(p => p.X)) / 2),
        (int)(((long)corners.Min(p => p.Y) + corners.Max(p => p.Y)) / 2));
}
