using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>The rooms and line walls of a description, checked, snapped to each other and divided at each other's corners.</summary>
internal sealed class StoreyOutlines
{
    private readonly HashSet<RoomName> left = [];

    /// <summary>The sound rooms, in the order listed.</summary>
    public List<Room> Rooms { get; } = [];

    /// <summary>Their divided outlines, anticlockwise.</summary>
    public List<List<PlanPoint>> RoomCorners { get; } = [];

    /// <summary>The divided lines of sound line walls.</summary>
    public Dictionary<WallDescription, List<PlanPoint>> LineCorners { get; } = new(ReferenceEqualityComparer.Instance);

    /// <summary>Checks, snaps and divides.</summary>
    public static StoreyOutlines Of(StoreyDescription description, Findings findings)
    {
        var outlines = new StoreyOutlines();
        var lines = new List<PlanLine>();
        List<RoomDescription> sound = outlines.AddRooms(description, lines, findings);
        var lineWalls = AddLineWalls(description, lines, findings);

        LineSnapping.Snap(lines, findings);
        List<PlanPoint>[] divided = LineNoding.Divide(lines, findings);
        for (int i = 0; i < sound.Count; i++)
            outlines.TakeRoom(sound[i], divided[i], findings);
        for (int i = 0; i < lineWalls.Count; i++)
            outlines.LineCorners.Add(lineWalls[i], divided[sound.Count + i]);
        return outlines;
    }

    /// <summary>Whether a place names a room that was left out for a problem of its own, so that nothing more needs to be said.</summary>
    public bool IsSpoiltFor(WallPlace place) => place switch
    {
        WallPlace.Between between => left.Contains(between.First) || left.Contains(between.Second),
        WallPlace.SideOf side => left.Contains(side.Room),
        _ => left.Count > 0,
    };

    private List<RoomDescription> AddRooms(StoreyDescription description, List<PlanLine> lines, Findings findings)
    {
        var sound = new List<RoomDescription>();
        foreach (RoomDescription room in description.Rooms)
        {
            string label = $"\"{room.Name}\"";
            if (sound.Exists(other => other.Name == room.Name))
            {
                findings.Wrong(room.Source, Aspect.Name, $"there are two rooms called {label}", $"a name of its own for each");
                continue;
            }

            List<PlanPoint>? corners = RoomChecks.ProperOutline(room.Source, label, room.Corners, findings);
            if (corners is null)
            {
                left.Add(room.Name);
                continue;
            }

            sound.Add(room);
            lines.Add(new PlanLine(room.Source, label, isClosed: true, corners));
        }

        return sound;
    }

    private static List<WallDescription> AddLineWalls(StoreyDescription description, List<PlanLine> lines, Findings findings)
    {
        var sound = new List<WallDescription>();
        foreach (WallDescription wall in description.Walls)
        {
            if (wall.Place is not WallPlace.Line line) continue;
            if (line.Start == line.End)
            {
                findings.Wrong(wall.Source, Aspect.Outline, $"the wall at {line.Start} has no length", $"two different ends");
                continue;
            }

            sound.Add(wall);
            string label = wall.Name is { } name ? $"\"{name}\"" : $"the wall {line.Start} to {line.End}";
            lines.Add(new PlanLine(wall.Source, label, isClosed: false, [line.Start, line.End]));
        }

        return sound;
    }

    private void TakeRoom(RoomDescription described, List<PlanPoint> divided, Findings findings)
    {
        // Snapping can spoil what is narrower than its tolerance.
        string label = $"\"{described.Name}\", after its edges were moved to meet others,";
        List<PlanPoint>? corners = RoomChecks.ProperOutline(described.Source, label, divided, findings);
        if (corners is null)
        {
            left.Add(described.Name);
            return;
        }

        for (int i = 0; i < Rooms.Count; i++)
        {
            if (RoomChecks.FirstOverlap(RoomCorners[i], corners) is not { } place) continue;
            findings.Wrong(
                described.Source,
                Aspect.Outline,
                $"\"{described.Name}\" overlaps \"{Rooms[i].Name}\" near {place}",
                $"outlines along the centre lines of walls, so that neighbours share an edge");
            left.Add(described.Name);
            return;
        }

        Rooms.Add(new Room(described.Name, new Polygon(RoomChecks.WithoutStraightCorners(corners))));
        RoomCorners.Add(corners);
    }
}
