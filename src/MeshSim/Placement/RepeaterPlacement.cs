using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>
/// The recommendation for one network: the fewest repeaters with which every device reaches the coordinator, and keeps doing so
/// where that is asked.
/// </summary>
public sealed record RepeaterPlacement
{
    /// <summary>The network.</summary>
    public required NetworkName Network { get; init; }

    /// <summary>What was asked.</summary>
    public PlacementGoals Goals { get; init; } = PlacementGoals.Default;

    /// <summary>Where to plug repeaters in, in the order of their outlets in the home; empty when none is needed.</summary>
    public required ImmutableArray<PlacedRepeater> Repeaters { get; init; }

    /// <summary>The states that must hold and were asked for, in the home's order; empty when none was.</summary>
    public ImmutableArray<string> StatesHeld { get; init; } = [];

    /// <summary>
    /// The devices that no choice of outlets can serve, each case of its own: everyday, then states, then losses; empty when
    /// everything that was asked is met.
    /// </summary>
    public required ImmutableArray<UnservedDevice> Unserved { get; init; }

    /// <summary>
    /// The states asked for in which the coordinator has no power, the one planned for first: nobody is served then, and another place of the
    /// coordinator or a backup supply is what may help.
    /// </summary>
    public ImmutableArray<CoordinatorOutage> CoordinatorOff { get; init; } = [];

    /// <summary>
    /// Mains devices that a held state would turn off and that stay powered instead, where that costs less than repeaters; in the
    /// home's order.
    /// </summary>
    public ImmutableArray<KeptDevice> KeptOn { get; init; } = [];

    /// <summary>Fewer repeaters than this cannot serve the devices that can be served, unless at a higher cost.</summary>
    public required int LowerBound { get; init; }

    /// <summary>What the recommendation costs, in the home's units.</summary>
    public int Cost { get; init; }

    /// <summary>Nothing that serves the devices that can be served costs less.</summary>
    public int CostBound { get; init; }

    /// <summary>Number of outlets considered.</summary>
    public required int OutletsConsidered { get; init; }

    /// <summary>Whether it is proven that fewer will not do, nor anything else that costs less.</summary>
    public bool IsProven => Repeaters.Length == LowerBound && Cost == CostBound;

    /// <summary>Whether every device is served in every case asked for.</summary>
    public bool ServesAll => Unserved.IsEmpty;
}

/// <summary>One recommended repeater.</summary>
public sealed record PlacedRepeater
{
    /// <summary>Where to plug it in.</summary>
    public required Outlet Outlet { get; init; }

    /// <summary>The devices that would be cut off without it everyday, all others in place; empty when it is for other cases.</summary>
    public required ImmutableArray<DeviceId> Serves { get; init; }

    /// <summary>
    /// Further devices that would be cut off without it in other cases, all others in place: in states, then after losses.
    /// </summary>
    public ImmutableArray<ServedCase> ServesWhen { get; init; } = [];

    /// <summary>Margin of its best link towards the coordinator, in the first case in which somebody cannot do without it.</summary>
    public required Decibels UplinkMargin { get; init; }

    /// <summary>Least margin of the links by which it serves the devices of that case or the next repeater.</summary>
    public required Decibels DownlinkMargin { get; init; }

    /// <summary>How wrong <see cref="UplinkMargin"/> may be.</summary>
    public MarginUncertainty UplinkUncertainty { get; init; }

    /// <summary>How wrong <see cref="DownlinkMargin"/> may be.</summary>
    public MarginUncertainty DownlinkUncertainty { get; init; }
}

/// <summary>A mains device that stays powered when a state would turn it off.</summary>
/// <param name="Device">The device, a router.</param>
/// <param name="Switch">The manual switch that is given up for it; null when it is only told to be off.</param>
/// <param name="ServesWhen">The devices that would be cut off if it went off, all else in place.</param>
/// <param name="UplinkMargin">Margin of its best link towards the coordinator, in the first of these cases.</param>
/// <param name="DownlinkMargin">Least margin of the links by which it serves the devices of that case.</param>
public sealed record KeptDevice(
    DeviceId Device, string? Switch, ImmutableArray<ServedCase> ServesWhen, Decibels UplinkMargin, Decibels DownlinkMargin);

/// <summary>When something holds: in a state, or with a router lost. Neither is everyday.</summary>
/// <param name="State">The state that must hold; null for none.</param>
/// <param name="Lost">The router that fails, in words; null for none.</param>
/// <param name="IsRepeaterLost">Whether that is a repeater yet to be plugged in.</param>
public readonly record struct PlacementCase(string? State, string? Lost, bool IsRepeaterLost = false);

/// <summary>Devices that a repeater serves in one case.</summary>
/// <param name="Case">The case.</param>
/// <param name="Devices">The devices, in the home's order.</param>
public sealed record ServedCase(PlacementCase Case, ImmutableArray<DeviceId> Devices);

/// <summary>A device that cannot be served from any outlet.</summary>
/// <param name="Device">The device.</param>
/// <param name="Shortfall">What its best possible link lacks to the design margin; null when hops, not level, are what is missing.</param>
/// <param name="BestRelay">From where that best link would come, in words: an outlet or a device.</param>
/// <param name="Case">When; the default is everyday.</param>
public sealed record UnservedDevice(DeviceId Device, Decibels? Shortfall, string BestRelay, PlacementCase Case = default)
{
    /// <summary>Whether the coordinator has no power in that case; neither level nor hops are then what is missing.</summary>
    public bool IsCoordinatorOff { get; init; }
}
