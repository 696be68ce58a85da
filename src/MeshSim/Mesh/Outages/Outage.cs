using System.Collections.Immutable;
using MeshSim.Devices;

namespace MeshSim.Mesh.Outages;

/// <summary>What kind of thing happens to the house.</summary>
public enum OutageKind
{
    /// <summary>A state that the home names.</summary>
    State,

    /// <summary>A manual switch is off.</summary>
    Switch,

    /// <summary>A mains circuit is off.</summary>
    Circuit,

    /// <summary>One router is off.</summary>
    Router,

    /// <summary>The coordinator is off.</summary>
    Hub,

    /// <summary>Two routers are off.</summary>
    Pair,
}

/// <summary>One thing to rehearse.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="Name">The state, switch, circuit or device; two devices joined by " + ".</param>
/// <param name="State">What is off and what stands open, all told.</param>
public sealed record Outage(OutageKind Kind, string Name, State State)
{
    /// <summary>Whether the home wants every device that still has power to stay reachable.</summary>
    public bool MustHold => Kind == OutageKind.State && State.MustHold;
}

/// <summary>A device that stays reached by another or a longer way.</summary>
/// <param name="Device">The device.</param>
/// <param name="Before">Its route without the outage.</param>
/// <param name="After">Its route in the outage.</param>
/// <param name="CommandBefore">How a command fares along the route before.</param>
/// <param name="CommandAfter">How a command fares along the route in the outage.</param>
public sealed record RouteChange(DeviceId Device, Route Before, Route After, CommandDelivery CommandBefore, CommandDelivery CommandAfter)
{
    /// <summary>Links more, or fewer when a door opens.</summary>
    public int HopsAdded => After.Hops - Before.Hops;

    /// <summary>Expected transmissions more.</summary>
    public double EtxAdded => After.Etx - Before.Etx;

    /// <summary>How much longer 95 of 100 commands take at most, ms; negative when they are faster.</summary>
    public double P95AddedMilliseconds => CommandAfter.P95Milliseconds - CommandBefore.P95Milliseconds;
}

/// <summary>What one outage does to one network.</summary>
public sealed record Rehearsal
{
    /// <summary>What happens.</summary>
    public required Outage Outage { get; init; }

    /// <summary>Devices of the network that lose their power by it, the coordinator included.</summary>
    public required ImmutableArray<DeviceId> Off { get; init; }

    /// <summary>Devices that keep their power and lose their route.</summary>
    public required ImmutableArray<DeviceId> Dropped { get; init; }

    /// <summary>Devices that had two routes without a shared router and are left with one.</summary>
    public required ImmutableArray<DeviceId> LeftWithOneWay { get; init; }

    /// <summary>Devices that have a route only now: an open door lets it through.</summary>
    public required ImmutableArray<DeviceId> Gained { get; init; }

    /// <summary>Devices that stay reached over other routers, or with other hops or transmissions.</summary>
    public required ImmutableArray<RouteChange> Changed { get; init; }

    /// <summary>The most links that a way gets longer by; 0 when none does.</summary>
    public int MostHopsAdded => Changed.Select(change => change.HopsAdded).Append(0).Max();

    /// <summary>The most expected transmissions that a way gets dearer by; 0 when none does.</summary>
    public double MostEtxAdded => Changed.Select(change => change.EtxAdded).Append(0).Max();

    /// <summary>The most by which commands to a device take longer, 95 of 100 of them, ms; 0 when none does.</summary>
    public double MostP95AddedMilliseconds => Changed.Select(change => change.P95AddedMilliseconds).Append(0).Max();
}
