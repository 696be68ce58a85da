using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans;

/// <summary>One storey of a home, with everything that stands on its floor.</summary>
public sealed record Storey
{
    /// <summary>Its name.</summary>
    public required StoreyName Name { get; init; }

    /// <summary>Its floor above the floor of the lowest storey, m.</summary>
    public required double ElevationMetres { get; init; }

    /// <summary>Clear height from floor to ceiling, m.</summary>
    public required double CeilingMetres { get; init; }

    /// <summary>The build-up underfoot, or null on the lowest storey.</summary>
    public FloorStructure? Floor { get; init; }

    /// <summary>Its rooms; empty when the storey is given as walls alone.</summary>
    public ImmutableArray<Room> Rooms { get; init; } = [];

    /// <summary>Its walls, each a straight piece between two joints.</summary>
    public ImmutableArray<Wall> Walls { get; init; } = [];

    /// <summary>Big things that block radio.</summary>
    public ImmutableArray<BlockingObject> Objects { get; init; } = [];

    /// <summary>The room that holds a point; on a shared edge the first room listed. Null outside all rooms.</summary>
    public Room? RoomAt(PlanPoint point)
    {
        foreach (Room room in Rooms)
            if (room.Outline.Contains(point)) return room;
        return null;
    }

    /// <summary>Whether a point lies in a room; where the storey has no rooms, within the rectangle around its walls.</summary>
    public bool Contains(PlanPoint point)
    {
        if (!Rooms.IsEmpty) return RoomAt(point) is not null;
        if (Walls.IsEmpty) return false;
        return Walls.Min(wall => Math.Min(wall.Start.X, wall.End.X)) <= point.X && point.X <= Walls.Max(wall => Math.Max(wall.Start.X, wall.End.X))
            && Walls.Min(wall => Math.Min(wall.Start.Y, wall.End.Y)) <= point.Y && point.Y <= Walls.Max(wall => Math.Max(wall.Start.Y, wall.End.Y));
    }

    /// <summary>From a point on the plan to the centre line of the nearest wall, m; infinite where there are no walls.</summary>
    public double DistanceMetresToNearestWall(PlanPoint point) =>
        Walls.Select(wall => point.DistanceMetresTo(wall.Start, wall.End)).DefaultIfEmpty(double.PositiveInfinity).Min();
}

/// <summary>A room: a name and an outline along the centre lines of its walls.</summary>
/// <param name="Name">Unique in the home.</param>
/// <param name="Outline">A simple polygon.</param>
public sealed record Room(RoomName Name, Polygon Outline);

/// <summary>A straight wall piece between two joints, from the middle of the structure below to the middle of the one above.</summary>
public sealed record Wall
{
    /// <summary>What a person calls it, such as "hall | kitchen" or "kitchen, east".</summary>
    public required string Name { get; init; }

    /// <summary>One end of its centre line.</summary>
    public required PlanPoint Start { get; init; }

    /// <summary>The other end.</summary>
    public required PlanPoint End { get; init; }

    /// <summary>What it is built of.</summary>
    public required ConstructionName Construction { get; init; }

    /// <summary>Doors and windows, in order from <see cref="Start"/>, not overlapping.</summary>
    public ImmutableArray<Opening> Openings { get; init; } = [];

    /// <summary>The rooms that it bounds: two for an inner wall, one for an outer wall, none for a free-standing line.</summary>
    public ImmutableArray<RoomName> Rooms { get; init; } = [];

    /// <summary>Length of the centre line, m.</summary>
    public double LengthMetres => Start.DistanceMetresTo(End);
}

/// <summary>What kind of opening.</summary>
public enum OpeningKind
{
    /// <summary>A door, which can stand open.</summary>
    Door,

    /// <summary>A window.</summary>
    Window,
}

/// <summary>A door or a window in a wall. While <see cref="IsOpen"/> it costs nothing.</summary>
public sealed record Opening
{
    /// <summary>Its name, unique in the home.</summary>
    public required string Name { get; init; }

    /// <summary>Door or window.</summary>
    public required OpeningKind Kind { get; init; }

    /// <summary>From the start of the wall to the nearer jamb, m.</summary>
    public required double OffsetMetres { get; init; }

    /// <summary>Clear width, m.</summary>
    public required double WidthMetres { get; init; }

    /// <summary>Bottom edge above the floor, m; 0 for a door.</summary>
    public double SillMetres { get; init; }

    /// <summary>From sill to head, m.</summary>
    public required double HeightMetres { get; init; }

    /// <summary>What fills it when closed.</summary>
    public required ConstructionName Construction { get; init; }

    /// <summary>Whether it stands open: nothing but air.</summary>
    public bool IsOpen { get; init; }
}

/// <summary>The build-up between a storey and the one below.</summary>
/// <param name="Construction">What it is built of.</param>
/// <param name="ThicknessMetres">From the ceiling below to the floor above, m.</param>
/// <param name="Stairwells">Holes in it.</param>
public sealed record FloorStructure(ConstructionName Construction, double ThicknessMetres, ImmutableArray<Stairwell> Stairwells);

/// <summary>A hole in a floor structure.</summary>
/// <param name="Outline">A simple polygon.</param>
public sealed record Stairwell(Polygon Outline);

/// <summary>Something big that blocks radio: a fridge-freezer, a hot-water cylinder, a chimney breast, a mirror.</summary>
public sealed record BlockingObject
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>A convex outline on the plan.</summary>
    public required Polygon Footprint { get; init; }

    /// <summary>Underside above the floor, m.</summary>
    public double BaseMetres { get; init; }

    /// <summary>From underside to top, m.</summary>
    public required double HeightMetres { get; init; }

    /// <summary>What it is made of; its loss counts once, however the path goes through.</summary>
    public required ConstructionName Construction { get; init; }
}
