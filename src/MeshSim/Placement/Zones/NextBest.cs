using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Quantities;

namespace MeshSim.Placement.Zones;

/// <summary>What happens when an outlet of a recommendation cannot be used.</summary>
public sealed record NextBest
{
    /// <summary>The outlet that takes its place while all else stays; null when none does as well.</summary>
    public Outlet? InItsPlace { get; init; }

    /// <summary>By how much its links could be weaker before somebody is lost; only of <see cref="InItsPlace"/>.</summary>
    public Decibels? Spare { get; init; }

    /// <summary>All repeaters without the outlet, in the home's order.</summary>
    public required ImmutableArray<Outlet> Repeaters { get; init; }

    /// <summary>The devices kept powered without the outlet, in the home's order.</summary>
    public required ImmutableArray<DeviceId> KeptOn { get; init; }

    /// <summary>By how much that costs more, in the home's units.</summary>
    public required int CostChange { get; init; }

    /// <summary>Who cannot be served without the outlet and could be with it, case by case.</summary>
    public required ImmutableArray<UnservedDevice> Fails { get; init; }

    /// <summary>Whether nothing better is possible without the outlet.</summary>
    public bool IsProven { get; init; } = true;
}

/// <summary>How firm one recommended outlet stands.</summary>
/// <param name="Outlet">The outlet.</param>
/// <param name="Spare">By how much all its links could be weaker before somebody is lost; null when nobody needs it.</param>
/// <param name="Next">What to do when it cannot be used.</param>
public sealed record SiteStanding(Outlet Outlet, Decibels? Spare, NextBest Next);
