using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Mesh;
using MeshSim.Mesh.Outages;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;

namespace MeshSim.Studies.Changes;

/// <summary>What became of the way of a device.</summary>
public enum WayChange
{
    /// <summary>The same way with the same margin, and one way or several as before.</summary>
    Unchanged,

    /// <summary>Another way, or another margin; none lost and none gained.</summary>
    Changed,

    /// <summary>It had no reliable way and has one.</summary>
    Won,

    /// <summary>It had a reliable way and has none.</summary>
    Lost,

    /// <summary>One router could take its way; now none can.</summary>
    GainedSecondWay,

    /// <summary>No one router could take its way; now one can.</summary>
    LeftWithOneWay,

    /// <summary>It is new in the network.</summary>
    Added,

    /// <summary>It is no longer in the network.</summary>
    Gone,
}

/// <summary>How one device reached the coordinator, and how it does.</summary>
/// <param name="Device">The device.</param>
/// <param name="Before">Before; null when it was not in the network.</param>
/// <param name="After">After; null when it is not in the network.</param>
public sealed record DeviceChange(DeviceId Device, DeviceReach? Before, DeviceReach? After)
{
    /// <summary>What became of its way.</summary>
    public WayChange Way => (Before, After) switch
    {
        (null, _) => WayChange.Added,
        (_, null) => WayChange.Gone,
        ({ IsReached: false }, { IsReached: true }) => WayChange.Won,
        ({ IsReached: true }, { IsReached: false }) => WayChange.Lost,
        ({ DisjointRoutes: > 1 }, { DisjointRoutes: 1 }) => WayChange.LeftWithOneWay,
        ({ DisjointRoutes: 1 }, { DisjointRoutes: > 1 }) => WayChange.GainedSecondWay,
        _ => IsSameWay ? WayChange.Unchanged : WayChange.Changed,
    };

    /// <summary>Margin of the weakest link of its way, after less before; null when there is no way to compare.</summary>
    public Decibels? MarginAdded => Before?.Route is { } was && After?.Route is { } becomes ? becomes.WeakestMargin - was.WeakestMargin : null;

    /// <summary>Whether that is for the worse: no reliable way where there was one or where a new device hangs, or one where there were more.</summary>
    public bool IsWorse => Way is WayChange.Lost or WayChange.LeftWithOneWay || (Way == WayChange.Added && After is { IsReached: false });

    private bool IsSameWay => (Before?.Route, After?.Route) switch
    {
        (null, null) => true,
        ({ } was, { } becomes) => was.WeakestMargin == becomes.WeakestMargin && was.Path.SequenceEqual(becomes.Path),
        _ => false,
    };
}

/// <summary>Who drops otherwise than before when something is off.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="Name">The state, switch, circuit or device.</param>
/// <param name="MustHold">Whether the home as it is after wants that state to hold.</param>
/// <param name="DropsNow">Devices that had a reliable way before, kept it then, and lose it now.</param>
/// <param name="DropsNoLonger">Devices that lost their way then and keep it now.</param>
public sealed record OutageChange(OutageKind Kind, string Name, bool MustHold, ImmutableArray<DeviceId> DropsNow, ImmutableArray<DeviceId> DropsNoLonger)
{
    /// <summary>Whether somebody drops who did not.</summary>
    public bool IsWorse => !DropsNow.IsEmpty;
}

/// <summary>How much of a room was covered, and is.</summary>
/// <param name="Storey">Its storey.</param>
/// <param name="Room">The room.</param>
/// <param name="Before">Before.</param>
/// <param name="After">After.</param>
public sealed record RoomChange(StoreyName Storey, RoomName Room, BandFloor Before, BandFloor After)
{
    /// <summary>A smaller loss of floor is not called worse: a twentieth of the room, assumed.</summary>
    public const double NoticedShare = 0.05;

    /// <summary>Whether it is darker by a share of its floor that a person notices.</summary>
    public bool IsWorse => Before.Covered - After.Covered >= NoticedShare;

    /// <summary>Whether it is brighter by a share of its floor that a person notices.</summary>
    public bool IsBetter => After.Covered - Before.Covered >= NoticedShare;
}

/// <summary>The margins over one storey, before and after, on the same points.</summary>
/// <param name="Storey">The storey.</param>
/// <param name="Before">Before, dB.</param>
/// <param name="After">After, dB.</param>
public sealed record MarginChange(StoreyName Storey, Field Before, Field After);

/// <summary>One network of two homes.</summary>
public sealed record NetworkChanges
{
    /// <summary>Links, routes and outages before.</summary>
    public required NetworkRehearsal Before { get; init; }

    /// <summary>Links, routes and outages after.</summary>
    public required NetworkRehearsal After { get; init; }

    /// <summary>Every device of either, the coordinators excepted: in the order of the home after, then those that are gone.</summary>
    public required ImmutableArray<DeviceChange> Devices { get; init; }

    /// <summary>Outages in which somebody drops otherwise than before.</summary>
    public required ImmutableArray<OutageChange> Outages { get; init; }

    /// <summary>Rooms of both homes, in the order of the home after.</summary>
    public required ImmutableArray<RoomChange> Rooms { get; init; }

    /// <summary>Storeys whose points can be laid over each other, in the order of the home after.</summary>
    public required ImmutableArray<MarginChange> Maps { get; init; }

    /// <summary>Whether anything is worse: a device, a drop in an outage, a room. Margins that stay above the design margin do not count.</summary>
    public bool IsWorse => Devices.Any(device => device.IsWorse) || Outages.Any(outage => outage.IsWorse) || Rooms.Any(room => room.IsWorse);
}
