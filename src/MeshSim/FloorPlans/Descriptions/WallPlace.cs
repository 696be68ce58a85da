using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>A side of the compass.</summary>
public enum CompassSide
{
    /// <summary>North.</summary>
    North,

    /// <summary>North-east.</summary>
    NorthEast,

    /// <summary>East.</summary>
    East,

    /// <summary>South-east.</summary>
    SouthEast,

    /// <summary>South.</summary>
    South,

    /// <summary>South-west.</summary>
    SouthWest,

    /// <summary>West.</summary>
    West,

    /// <summary>North-west.</summary>
    NorthWest,
}

/// <summary>Which wall a person means.</summary>
public abstract record WallPlace
{
    private WallPlace()
    {
    }

    /// <summary>The wall that two rooms share.</summary>
    /// <param name="First">One room.</param>
    /// <param name="Second">The other.</param>
    public sealed record Between(RoomName First, RoomName Second) : WallPlace;

    /// <summary>
    /// The walls of a room, inner and outer, whose outward side faces a side of the compass: within 45° of one of the four
    /// main sides, within 22.5° of one of the four others.
    /// </summary>
    /// <param name="Room">The room.</param>
    /// <param name="Facing">Seen from within the room.</param>
    public sealed record SideOf(RoomName Room, CompassSide Facing) : WallPlace;

    /// <summary>A straight line. Where it runs along the edge of a room, it stands for that stretch of wall.</summary>
    /// <param name="Start">One end.</param>
    /// <param name="End">The other end.</param>
    public sealed record Line(PlanPoint Start, PlanPoint End) : WallPlace;

    /// <summary>The wall of a name, as another description gave it or as it follows from the rooms.</summary>
    /// <param name="Name">Its name.</param>
    public sealed record Named(string Name) : WallPlace;
}
