using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Devices;

/// <summary>What a device runs on.</summary>
public enum PowerSource
{
    /// <summary>Mains: it can listen all the time.</summary>
    Mains,

    /// <summary>Battery: it sleeps, and relays nothing.</summary>
    Battery,

    /// <summary>A USB port of the hub box.</summary>
    Usb,
}

/// <summary>The part that a device plays in its network (IEEE 802.15.4 terms, used for the other meshes alike).</summary>
public enum Role
{
    /// <summary>The root of the network.</summary>
    Coordinator,

    /// <summary>Passes frames on.</summary>
    Router,

    /// <summary>Speaks for itself alone.</summary>
    EndDevice,
}

/// <summary>A radio device, installed or intended.</summary>
public sealed record Device
{
    /// <summary>Unique in the home.</summary>
    public required DeviceId Id { get; init; }

    /// <summary>What people call it.</summary>
    public required string Name { get; init; }

    /// <summary>The network that it belongs to.</summary>
    public required NetworkName Network { get; init; }

    /// <summary>What kind of thing it is, in the person's words: plug, bulb, contact sensor.</summary>
    public string Kind { get; init; } = "";

    /// <summary>What it runs on.</summary>
    public required PowerSource Power { get; init; }

    /// <summary>The part that it plays.</summary>
    public required Role Role { get; init; }

    /// <summary>Its storey.</summary>
    public required StoreyName Storey { get; init; }

    /// <summary>Its place on the plan.</summary>
    public required PlanPoint Point { get; init; }

    /// <summary>Its height above the storey's floor, m.</summary>
    public required double HeightMetres { get; init; }

    /// <summary>Its room; null outdoors, and where the storey has no rooms.</summary>
    public RoomName? Room { get; init; }

    /// <summary>How it is hidden.</summary>
    public required Mounting Mounting { get; init; }

    /// <summary>The mains circuit that feeds it, or null.</summary>
    public string? Circuit { get; init; }

    /// <summary>The manual switch that cuts its power, or null.</summary>
    public string? SwitchedBy { get; init; }

    /// <summary>Its transmit power at the antenna connector; null takes the profile's.</summary>
    public PowerLevel? TransmitPower { get; init; }

    /// <summary>Anything else worth keeping.</summary>
    public string Note { get; init; } = "";

    /// <summary>What was there before it came, with references to the person's own wiring drawings.</summary>
    public string Before { get; init; } = "";

    /// <summary>What is there since, with references to the person's own wiring drawings.</summary>
    public string After { get; init; } = "";
}

/// <summary>A mains outlet where a repeater could be plugged in.</summary>
public sealed record Outlet
{
    /// <summary>Unique in the home.</summary>
    public required OutletId Id { get; init; }

    /// <summary>Its storey.</summary>
    public required StoreyName Storey { get; init; }

    /// <summary>Its place on the plan.</summary>
    public required PlanPoint Point { get; init; }

    /// <summary>Its height above the storey's floor, m.</summary>
    public required double HeightMetres { get; init; }

    /// <summary>Its room; null outdoors, and where the storey has no rooms.</summary>
    public RoomName? Room { get; init; }

    /// <summary>The mains circuit that feeds it, or null.</summary>
    public string? Circuit { get; init; }

    /// <summary>Whether it was not listed but assumed along a wall.</summary>
    public bool IsAssumed { get; init; }
}
