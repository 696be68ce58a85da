using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>Marks the place where something was described, such as a line of a file. Only its giver reads it. The default is 0.</summary>
/// <param name="Value">Whatever the giver can find the place by.</param>
public readonly record struct SourceKey(int Value);

/// <summary>
/// A storey in a person's words: rooms first, or walls as lines alone. <see cref="StoreyBuilder"/> makes a <see cref="Storey"/> of it.
/// </summary>
public sealed record StoreyDescription
{
    /// <summary>Where it was described.</summary>
    public required SourceKey Source { get; init; }

    /// <summary>Its name.</summary>
    public required StoreyName Name { get; init; }

    /// <summary>Its floor above the floor of the lowest storey, m.</summary>
    public required double ElevationMetres { get; init; }

    /// <summary>Clear height from floor to ceiling, m.</summary>
    public required double CeilingMetres { get; init; }

    /// <summary>What walls with a room on one side are built of; needed when there are rooms.</summary>
    public ConstructionName? Outer { get; init; }

    /// <summary>What walls between two rooms are built of; needed when rooms touch.</summary>
    public ConstructionName? Inner { get; init; }

    /// <summary>Direction of north on the plan, degrees clockwise from up the page.</summary>
    public double NorthDegrees { get; init; }

    /// <summary>The build-up underfoot, or null on the lowest storey.</summary>
    public FloorDescription? Floor { get; init; }

    /// <summary>Its rooms; empty when the storey is given as walls alone.</summary>
    public ImmutableArray<RoomDescription> Rooms { get; init; } = [];

    /// <summary>Walls that differ from the default, and walls that no room edge gives; a later one overrides an earlier one.</summary>
    public ImmutableArray<WallDescription> Walls { get; init; } = [];

    /// <summary>Doors and windows.</summary>
    public ImmutableArray<OpeningDescription> Openings { get; init; } = [];

    /// <summary>Big things that block radio.</summary>
    public ImmutableArray<ObjectDescription> Objects { get; init; } = [];
}

/// <summary>A room by its corners.</summary>
/// <param name="Source">Where it was described.</param>
/// <param name="Name">Unique in the storey.</param>
/// <param name="Corners">In order, either way round, along the centre lines of its walls.</param>
public sealed record RoomDescription(SourceKey Source, RoomName Name, ImmutableArray<PlanPoint> Corners);

/// <summary>A floor structure.</summary>
/// <param name="Source">Where it was described.</param>
/// <param name="Construction">What it is built of.</param>
/// <param name="ThicknessMetres">From the ceiling below to the floor above, m.</param>
/// <param name="Stairwells">Holes in it.</param>
public sealed record FloorDescription(
    SourceKey Source, ConstructionName Construction, double ThicknessMetres, ImmutableArray<StairwellDescription> Stairwells);

/// <summary>A stairwell by its corners.</summary>
/// <param name="Source">Where it was described.</param>
/// <param name="Corners">In order, either way round.</param>
public sealed record StairwellDescription(SourceKey Source, ImmutableArray<PlanPoint> Corners);

/// <summary>A wall that differs from the default, or that no room edge gives.</summary>
/// <param name="Source">Where it was described.</param>
/// <param name="Place">Which wall.</param>
/// <param name="Construction">What it is built of.</param>
/// <param name="Name">What a person calls it; null keeps the name that follows from its rooms.</param>
public sealed record WallDescription(SourceKey Source, WallPlace Place, ConstructionName Construction, string? Name = null);

/// <summary>A door or a window and the wall that it sits in.</summary>
public sealed record OpeningDescription
{
    /// <summary>Where it was described.</summary>
    public required SourceKey Source { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Door or window.</summary>
    public required OpeningKind Kind { get; init; }

    /// <summary>The wall that it sits in.</summary>
    public required WallPlace Place { get; init; }

    /// <summary>
    /// From the left end of that wall to the nearer jamb, m: from the end with the smaller x, of an upright wall from the end
    /// with the smaller y. A wall or side of several pieces is measured as a whole, from the first end of them all; pieces
    /// that stand apart are measured along their common direction.
    /// </summary>
    public required double OffsetMetres { get; init; }

    /// <summary>Clear width, m.</summary>
    public required double WidthMetres { get; init; }

    /// <summary>Bottom edge above the floor, m; 0 for a door.</summary>
    public double SillMetres { get; init; }

    /// <summary>From sill to head, m.</summary>
    public required double HeightMetres { get; init; }

    /// <summary>What fills it when closed.</summary>
    public required ConstructionName Construction { get; init; }

    /// <summary>Whether it stands open.</summary>
    public bool IsOpen { get; init; }
}

/// <summary>An object.</summary>
/// <param name="Source">Where it was described.</param>
/// <param name="Name">Its name.</param>
/// <param name="Corners">A convex outline, either way round.</param>
/// <param name="BaseMetres">Underside above the floor, m.</param>
/// <param name="HeightMetres">From underside to top, m.</param>
/// <param name="Construction">What it is made of.</param>
public sealed record ObjectDescription(
    SourceKey Source, string Name, ImmutableArray<PlanPoint> Corners, double BaseMetres, double HeightMetres, ConstructionName Construction);
