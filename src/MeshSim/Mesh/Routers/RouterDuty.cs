using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh.Outages;

namespace MeshSim.Mesh.Routers;

/// <summary>What to do about the power of a mains device.</summary>
public enum RouterVerdict
{
    /// <summary>Others need it, and no switch or state takes its power: leave it so.</summary>
    Keep,

    /// <summary>Others need it, and a switch or a state takes its power: put something beside it that is always on.</summary>
    Replace,

    /// <summary>Nobody needs it: it may be switched off.</summary>
    Harmless,
}

/// <summary>What one mains device does for the others.</summary>
public sealed record RouterDuty
{
    /// <summary>The device.</summary>
    public required DeviceId Device { get; init; }

    /// <summary>Whether it passes frames on; a mains device that is set up as an end device does not.</summary>
    public required bool Relays { get; init; }

    /// <summary>Whether it reaches the coordinator itself.</summary>
    public required bool IsReached { get; init; }

    /// <summary>Devices whose route of least expected transmissions passes through it.</summary>
    public required ImmutableArray<DeviceId> Carries { get; init; }

    /// <summary>Devices that have no route within the hop limit without it.</summary>
    public required ImmutableArray<DeviceId> NeededBy { get; init; }

    /// <summary>Devices that would be left with one way without it.</summary>
    public required ImmutableArray<DeviceId> LeavesOneWay { get; init; }

    /// <summary>The manual switches, circuits and states that take its power.</summary>
    public required ImmutableArray<Outage> TakenBy { get; init; }

    /// <summary>
    /// Those of the switches and states in which it is missed: a device with power drops that needs it, or that it would bring
    /// back by staying on.
    /// </summary>
    public required ImmutableArray<Outage> MissedIn { get; init; }

    /// <summary>What to do about its power.</summary>
    public RouterVerdict Verdict =>
        !MissedIn.IsEmpty ? RouterVerdict.Replace : NeededBy.IsEmpty ? RouterVerdict.Harmless : RouterVerdict.Keep;
}
