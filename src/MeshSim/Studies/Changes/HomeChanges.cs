using System.Collections.Immutable;
using MeshSim.Devices;

namespace MeshSim.Studies.Changes;

/// <summary>A device or an outlet that stands elsewhere.</summary>
/// <param name="Id">Its id.</param>
/// <param name="DistanceMetres">How far, straight through the building.</param>
/// <param name="Before">Where it was, such as "ground (1.2, 3.4) 0.3 m up".</param>
/// <param name="After">Where it is.</param>
public sealed record Move(string Id, double DistanceMetres, string Before, string After);

/// <summary>Something that a person wrote differently.</summary>
/// <param name="Subject">What it is about: a device's id, a network, a state, …; "" for the home itself.</param>
/// <param name="Property">As the home folder calls it.</param>
/// <param name="Before">What stood there; "" for nothing.</param>
/// <param name="After">What stands there; "" for nothing.</param>
public sealed record PropertyChange(string Subject, string Property, string Before, string After);

/// <summary>A difference of the building, which is why something cannot be compared, or compares with another building.</summary>
/// <param name="Subject">A storey or a room.</param>
/// <param name="Words">What is different.</param>
/// <param name="HidesTheMap">Whether the storey's points cannot be laid over each other.</param>
public sealed record PlanChange(string Subject, string Words, bool HidesTheMap);

/// <summary>What somebody changed between two homes, before anything is computed.</summary>
public sealed record HomeChanges
{
    /// <summary>Devices only after, in that home's order.</summary>
    public required ImmutableArray<Device> Added { get; init; }

    /// <summary>Devices only before, in that home's order.</summary>
    public required ImmutableArray<Device> Gone { get; init; }

    /// <summary>Devices elsewhere.</summary>
    public required ImmutableArray<Move> Moved { get; init; }

    /// <summary>Devices with other properties than their place.</summary>
    public required ImmutableArray<PropertyChange> Changed { get; init; }

    /// <summary>Outlets only after; assumed ones are left out.</summary>
    public required ImmutableArray<Outlet> OutletsAdded { get; init; }

    /// <summary>Outlets only before; assumed ones are left out.</summary>
    public required ImmutableArray<Outlet> OutletsGone { get; init; }

    /// <summary>Outlets elsewhere.</summary>
    public required ImmutableArray<Move> OutletsMoved { get; init; }

    /// <summary>Networks, states, access points, circuits, planning.</summary>
    public required ImmutableArray<PropertyChange> Settings { get; init; }

    /// <summary>The building.</summary>
    public required ImmutableArray<PlanChange> Plan { get; init; }

    /// <summary>Whether anything at all is different.</summary>
    public bool Any =>
        !(Added.IsEmpty && Gone.IsEmpty && Moved.IsEmpty && Changed.IsEmpty && OutletsAdded.IsEmpty && OutletsGone.IsEmpty && OutletsMoved.IsEmpty
            && Settings.IsEmpty && Plan.IsEmpty);
}
