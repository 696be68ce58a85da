using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.FloorPlans;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;

namespace MeshSim.Studies;

/// <summary>
/// By how much the margin in one network exceeds that in another at the same place, and where it comes from; negative where it
/// falls short. The parts sum to the total.
/// </summary>
public sealed record BandDifference
{
    /// <summary>Free space over the first metre: antennas of the same gain catch less at shorter wavelengths.</summary>
    public required Decibels FreeSpace { get; init; }

    /// <summary>The rest of the distance: the way to the one's nearest relay is not the way to the other's.</summary>
    public required Decibels Distance { get; init; }

    /// <summary>Walls, doors, windows, floors and objects.</summary>
    public required Decibels Walls { get; init; }

    /// <summary>What hides the two ends.</summary>
    public required Decibels Mounting { get; init; }

    /// <summary>Transmit power and antennas.</summary>
    public required Decibels Power { get; init; }

    /// <summary>What undisturbed receivers need.</summary>
    public required Decibels Sensitivity { get; init; }

    /// <summary>What noise and Wi-Fi at the receiver add to that.</summary>
    public required Decibels Interference { get; init; }

    /// <summary>All of it.</summary>
    public Decibels Total => FreeSpace + Distance + Walls + Mounting + Power + Sensitivity + Interference;
}

/// <summary>How a device stands, or would stand, in one network.</summary>
/// <param name="Hops">Links to the coordinator; null without a route.</param>
/// <param name="Budget">Its own link: the first of its route, or what comes nearest; null when nobody is there to hear it.</param>
public sealed record BandStanding(int? Hops, Budget? Budget);

/// <summary>One device in two networks, at the same place and in the same mounting.</summary>
/// <param name="Device">The device.</param>
/// <param name="First">In the first network.</param>
/// <param name="Second">In the second.</param>
/// <param name="Difference">By how much its own link is better in the first; null where there is no link.</param>
public sealed record BandDevice(Device Device, BandStanding First, BandStanding Second, BandDifference? Difference);

/// <summary>How much of a room one network covers.</summary>
/// <param name="Covered">Share of the floor at or above the design margin, 0 to 1.</param>
/// <param name="Median">The margin that half of the floor exceeds; minus infinity when nobody can be spoken to.</param>
public sealed record BandFloor(double Covered, Decibels Median);

/// <summary>One room in two networks.</summary>
/// <param name="Storey">Its storey.</param>
/// <param name="Room">The room.</param>
/// <param name="First">In the first network.</param>
/// <param name="Second">In the second.</param>
/// <param name="InTheMiddle">By how much the first is better in the middle of the room; null where one of them has nobody to speak to.</param>
public sealed record BandRoom(StoreyName Storey, RoomName Room, BandFloor First, BandFloor Second, BandDifference? InTheMiddle);

/// <summary>Two networks over one storey.</summary>
/// <param name="Storey">The storey.</param>
/// <param name="First">Margins in the first network, dB.</param>
/// <param name="Second">Margins in the second, dB.</param>
public sealed record BandMap(StoreyName Storey, Field First, Field Second);

/// <summary>Two networks of a home compared, room by room and device by device.</summary>
public sealed record BandComparison
{
    /// <summary>Links and routes of the first network, the one of the lower carrier unless asked otherwise.</summary>
    public required NetworkCoverage First { get; init; }

    /// <summary>Links and routes of the second.</summary>
    public required NetworkCoverage Second { get; init; }

    /// <summary>Every room, in the home's order.</summary>
    public required ImmutableArray<BandRoom> Rooms { get; init; }

    /// <summary>Every device but the coordinators, in the home's order.</summary>
    public required ImmutableArray<BandDevice> Devices { get; init; }

    /// <summary>Every storey that has rooms or walls, in the home's order.</summary>
    public required ImmutableArray<BandMap> Maps { get; init; }
}
