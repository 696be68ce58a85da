using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;

namespace MeshSim.Studies.Sites;

/// <summary>Where a repeater or the hub does as well as at the recommended outlet, all else staying where it is.</summary>
public sealed record SiteZone
{
    /// <summary>
    /// Per storey, lowest first: by how much all links of the thing could be weaker at each point before somebody is lost, dB.
    /// At 0 and above the point is in the zone; not-a-number where nothing can stand.
    /// </summary>
    public required ImmutableArray<Field> Spare { get; init; }

    /// <summary>The parts of the zone, storeys lowest first, rooms in the order of the plan.</summary>
    public required ImmutableArray<ZonePart> Parts { get; init; }

    /// <summary>Its area, m².</summary>
    public double AreaSquareMetres => Parts.Sum(part => part.AreaSquareMetres);
}

/// <summary>The part of a zone in one room.</summary>
/// <param name="Storey">The storey.</param>
/// <param name="Room">The room; null on a storey without rooms.</param>
/// <param name="AreaSquareMetres">Area of the part, m².</param>
/// <param name="Share">Its share of the room, above 0 up to 1.</param>
/// <param name="Side">To which side of the room it lies; null where it lies about the middle.</param>
/// <param name="MostSpare">The most that is to spare at a point of it.</param>
public sealed record ZonePart(StoreyName Storey, RoomName? Room, double AreaSquareMetres, double Share, CompassSide? Side, Decibels MostSpare);
