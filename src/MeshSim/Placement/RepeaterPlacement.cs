using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>The recommendation for one network: the fewest repeaters with which every device reaches the coordinator.</summary>
public sealed record RepeaterPlacement
{
    /// <summary>The network.</summary>
    public required NetworkName Network { get; init; }

    /// <summary>Where to plug repeaters in, in the order of their outlets in the home; empty when none is needed.</summary>
    public required ImmutableArray<PlacedRepeater> Repeaters { get; init; }

    /// <summary>The devices that no choice of outlets can serve; empty when all are served.</summary>
    public required ImmutableArray<UnservedDevice> Unserved { get; init; }

    /// <summary>Fewer repeaters than this cannot serve the devices that can be served.</summary>
    public required int LowerBound { get; init; }

    /// <summary>Number of outlets considered.</summary>
    public required int OutletsConsidered { get; init; }

    /// <summary>Whether it is proven that fewer will not do.</summary>
    public bool IsProven => Repeaters.Length == LowerBound;

    /// <summary>Whether every device is served.</summary>
    public bool ServesAll => Unserved.IsEmpty;
}

/// <summary>One recommended repeater.</summary>
public sealed record PlacedRepeater
{
    /// <summary>Where to plug it in.</summary>
    public required Outlet Outlet { get; init; }

    /// <summary>The devices that would be cut off without it, all others in place.</summary>
    public required ImmutableArray<DeviceId> Serves { get; init; }

    /// <summary>Margin of its best link towards the coordinator.</summary>
    public required Decibels UplinkMargin { get; init; }

    /// <summary>Least margin of the links by which it serves <see cref="Serves"/> or the next repeater.</summary>
    public required Decibels DownlinkMargin { get; init; }
}

/// <summary>A device that cannot be served from any outlet.</summary>
/// <param name="Device">The device.</param>
/// <param name="Shortfall">What its best possible link lacks to the design margin; null when hops, not level, are what is missing.</param>
/// <param name="BestRelay">From where that best link would come, in words: an outlet or a device.</param>
public sealed record UnservedDevice(DeviceId Device, Decibels? Shortfall, string BestRelay);
