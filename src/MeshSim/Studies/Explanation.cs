using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Mesh;
using MeshSim.Mesh.Outages;
using MeshSim.Quantities;

namespace MeshSim.Studies;

/// <summary>How one device stands in one network.</summary>
public sealed record DeviceStanding
{
    /// <summary>Whether it has power in the state asked for.</summary>
    public required bool IsOn { get; init; }

    /// <summary>Its route, or what comes nearest; null without power and for the coordinator.</summary>
    public DeviceReach? Reach { get; init; }

    /// <summary>The first link of its route, or the one that comes nearest to being one; null when nobody is there to hear it.</summary>
    public Link? Link { get; init; }

    /// <summary>Outages in which it has power and no route.</summary>
    public required DeviceOutages Outages { get; init; }

    /// <summary>Whether there is a route.</summary>
    public bool IsReached => Reach?.IsReached == true;

    /// <summary>The margin of the weakest link of the route; without one, of the link that comes nearest. Minus infinity when there is none.</summary>
    public Decibels Margin => Reach?.Route?.WeakestMargin ?? Link?.Margin ?? new(double.NegativeInfinity);

    /// <summary>Share of commands that arrive, 0 to 1: retries included over the route, at the first try over the link that comes nearest.</summary>
    public double Delivery => Reach?.Command?.Delivery ?? Reach?.Route?.Delivery ?? (Link is { } link ? Math.Min(link.Delivery, link.ReverseDelivery) : 0);

    /// <summary>Routes that share no router.</summary>
    public int Ways => Reach?.DisjointRoutes ?? 0;
}

/// <summary>What a fix makes of a device, found out by applying it and running the study again.</summary>
/// <param name="Fix">The fix.</param>
/// <param name="After">How the device stands then.</param>
/// <param name="LeftWithOneWay">How many other devices had two ways without a shared router and have one then.</param>
public sealed record DeviceFix(Fix Fix, DeviceStanding After, int LeftWithOneWay);

/// <summary>Why a device drops out, and what could be done.</summary>
public sealed record DeviceExplanation
{
    /// <summary>Links and routes of its network, in the state asked for.</summary>
    public required NetworkCoverage Coverage { get; init; }

    /// <summary>The device.</summary>
    public required Device Device { get; init; }

    /// <summary>How it stands.</summary>
    public required DeviceStanding Now { get; init; }

    /// <summary>The budget of its link; null when there is none.</summary>
    public required Budget? Budget { get; init; }

    /// <summary>How it would stand in each other network of the home, in their order.</summary>
    public required ImmutableArray<(Network Network, DeviceStanding Standing)> Elsewhere { get; init; }

    /// <summary>Fixes that help, the best first.</summary>
    public required ImmutableArray<DeviceFix> Fixes { get; init; }

    /// <summary>How many changes were tried.</summary>
    public required int Tried { get; init; }

    /// <summary>Whether it is a device that must not depend on a radio network: nothing is proposed then.</summary>
    public required bool IsAlarm { get; init; }

    /// <summary>Whether some network of the home reaches it, or would, or a fix makes its own do so.</summary>
    public bool CanBeReached => Now.IsReached || Elsewhere.Any(other => other.Standing.IsReached) || Fixes.Any(fix => fix.After.IsReached);
}

/// <summary>How well a room is covered for a battery device carried around in it.</summary>
/// <param name="DarkShare">Share of the floor below the design margin, 0 to 1.</param>
/// <param name="Worst">The margin at the worst place; minus infinity when nobody can be spoken to.</param>
/// <param name="WorstPlace">That place: away from the walls where the room is wide enough.</param>
public sealed record RoomStanding(double DarkShare, Decibels Worst, PlanPoint WorstPlace);

/// <summary>What a fix makes of a room.</summary>
/// <param name="Fix">The fix.</param>
/// <param name="After">How the room stands then.</param>
/// <param name="LeftWithOneWay">How many devices had two ways without a shared router and have one then.</param>
public sealed record RoomFix(Fix Fix, RoomStanding After, int LeftWithOneWay);

/// <summary>Why a room is dark, and what could be done.</summary>
public sealed record RoomExplanation
{
    /// <summary>Links and routes of the network, in the state asked for.</summary>
    public required NetworkCoverage Coverage { get; init; }

    /// <summary>The room.</summary>
    public required Room Room { get; init; }

    /// <summary>Its storey.</summary>
    public required StoreyName Storey { get; init; }

    /// <summary>How it stands.</summary>
    public required RoomStanding Now { get; init; }

    /// <summary>The best link of a device at the worst place; null when nobody is there to hear it.</summary>
    public required Budget? Budget { get; init; }

    /// <summary>Outages that make more of it dark, and how much is dark then.</summary>
    public required ImmutableArray<(Outage Outage, double DarkShare)> Darkened { get; init; }

    /// <summary>How much of it is dark in each other network of the home, in their order.</summary>
    public required ImmutableArray<(Network Network, double DarkShare)> Elsewhere { get; init; }

    /// <summary>Fixes that help, the best first.</summary>
    public required ImmutableArray<RoomFix> Fixes { get; init; }

    /// <summary>How many changes were tried.</summary>
    public required int Tried { get; init; }
}
