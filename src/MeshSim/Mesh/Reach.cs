using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Quantities;

namespace MeshSim.Mesh;

/// <summary>A way from a device to the coordinator.</summary>
public sealed record Route
{
    /// <summary>The device first, then the routers in order, the coordinator last.</summary>
    public required ImmutableArray<DeviceId> Path { get; init; }

    /// <summary>Expected transmissions over all links.</summary>
    public required double Etx { get; init; }

    /// <summary>The margin of its weakest link.</summary>
    public required Decibels WeakestMargin { get; init; }

    /// <summary>Share of frames that pass all links without a retry, 0 to 1.</summary>
    public required double Delivery { get; init; }

    /// <summary>Links in a row.</summary>
    public int Hops => Path.Length - 1;

    /// <summary>The routers on the way, in order.</summary>
    public ImmutableArray<DeviceId> Relays => Path[1..^1];
}

/// <summary>A relay that a device could keep as its parent.</summary>
/// <param name="Parent">The coordinator or a router.</param>
/// <param name="Margin">The margin of the link to it.</param>
/// <param name="Etx">Expected transmissions over that link and the parent's own route.</param>
/// <param name="Hops">Links to the coordinator.</param>
public sealed record ParentChoice(DeviceId Parent, Decibels Margin, double Etx, int Hops);

/// <summary>How one device reaches the coordinator.</summary>
public sealed record DeviceReach
{
    /// <summary>The device.</summary>
    public required DeviceId Device { get; init; }

    /// <summary>The route of least expected transmissions within the hop limit, or null when there is none.</summary>
    public required Route? Route { get; init; }

    /// <summary>The largest number of routes that share no router. Not limited in hops.</summary>
    public required int DisjointRoutes { get; init; }

    /// <summary>
    /// The route of least expected transmissions within the hop limit that shares no router with <see cref="Route"/>, nor its
    /// link when that is direct; null when there is none.
    /// </summary>
    public Route? SecondRoute { get; init; }

    /// <summary>
    /// For a device that relays nothing, whom it would choose as its parent, the best first, at most two. Empty for a router and
    /// for a device out of reach.
    /// </summary>
    public ImmutableArray<ParentChoice> Parents { get; init; } = [];

    /// <summary>
    /// The routers without any one of which it has no route within the hop limit, the nearest to the coordinator first. Empty for
    /// a device out of reach.
    /// </summary>
    public ImmutableArray<DeviceId> Needs { get; init; } = [];

    /// <summary>
    /// The link that comes nearest to connecting an unreachable device: the greatest margin to any reached device that
    /// relays. Null for a reached device, or when the network has nobody else.
    /// </summary>
    public Link? NearestLink { get; init; }

    /// <summary>How a command from the coordinator fares along <see cref="Route"/>; null without a route, or when nobody asked.</summary>
    public CommandDelivery? Command { get; init; }

    /// <summary>Whether there is a route.</summary>
    public bool IsReached => Route is not null;
}
