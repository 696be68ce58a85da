using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;

namespace MeshSim.Studies;

/// <summary>What somebody who stands before one device, or inherits the house, must know of it.</summary>
public sealed record DeviceRecord
{
    /// <summary>The device: where it is hidden, what feeds it, what was there before.</summary>
    public required Device Device { get; init; }

    /// <summary>Its network.</summary>
    public required Network Network { get; init; }

    /// <summary>Where its circuit is isolated, in the person's words; null when no circuit is named, or the home does not say.</summary>
    public required string? IsolatedAt { get; init; }

    /// <summary>How it reaches the coordinator; null for the coordinator itself and for a device without power.</summary>
    public required DeviceReach? Reach { get; init; }

    /// <summary>The coordinator or router that it speaks to; null without a reliable way.</summary>
    public DeviceId? Parent => Reach?.Route?.Path[1];

    /// <summary>How it is taken out in a hurry.</summary>
    public required ImmutableArray<RemovalStep> Removal { get; init; }

    /// <summary>Devices that keep power and lose their reliable way when this one alone is off.</summary>
    public required ImmutableArray<DeviceId> Drops { get; init; }

    /// <summary>Devices that are left with one way when this one alone is off.</summary>
    public required ImmutableArray<DeviceId> LeavesOneWay { get; init; }

    /// <summary>The other devices of the home, of any network, on the same circuit.</summary>
    public required ImmutableArray<DeviceId> OnSameCircuit { get; init; }

    /// <summary>Devices of its network that keep power and lose their reliable way when its circuit is off.</summary>
    public required ImmutableArray<DeviceId> DropsWithCircuit { get; init; }
}
