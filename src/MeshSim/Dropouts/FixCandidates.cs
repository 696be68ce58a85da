using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Dropouts;

/// <summary>What could be tried about a dropout. Nothing here says whether it helps.</summary>
public static class FixCandidates
{
    /// <summary>Heights that a device could be put at, m: within reach of a hand. Common practice, no source.</summary>
    private static readonly ImmutableArray<double> HeightsMetres = [1.5, 2.0];

    /// <summary>A device is not raised for less, m.</summary>
    private const double LeastRiseMetres = 0.25;

    /// <summary>Room kept below the ceiling, m.</summary>
    private const double BelowCeilingMetres = 0.1;

    /// <summary>Carriers nearer than this to each other are the same band: walls cannot tell them apart.</summary>
    private const double SameBandRatio = 1.05;

    /// <summary>What could be done with a device, its network and the way to it.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">The device's network.</param>
    /// <param name="device">The device, not the coordinator.</param>
    /// <param name="link">The link in question; null when there is none.</param>
    /// <param name="missed">Routers of the network that lose their power in a situation in which the device drops.</param>
    public static IEnumerable<Fix> ForDevice(Home home, Network network, Device device, Link? link, IEnumerable<Device> missed) =>
    [
        .. OfPlace(home, network, device),
        .. ForNetwork(home, network, link, missed),
        .. home.Networks.Where(other => other.Name != network.Name && !IsSameBand(other, network) && other.Coordinator != device.Id)
            .Select(other => new ChangeNetwork(device.Id, other)),
    ];

    /// <summary>What could be done for whatever is in a room.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">The network.</param>
    /// <param name="link">The link in question; null when there is none.</param>
    /// <param name="missed">Routers of the network that have no power.</param>
    public static IEnumerable<Fix> ForNetwork(Home home, Network network, Link? link, IEnumerable<Device> missed)
    {
        bool isMesh = network.Radio.Topology == Topology.Mesh;
        HashSet<DeviceId> taken = [.. home.Devices.Select(device => device.Id)];
        bool hasCoordinator = taken.Contains(network.Coordinator);
        return
        [
            .. missed.Where(router => router.Role == Role.Router).Select(router => new KeepPowered(router.Id, router.SwitchedBy)),
            .. DoorsOn(link).Select(door => new LeaveOpen(door)),
            .. isMesh ? home.Outlets.Select(outlet => new AddRepeater(network.Name, outlet)).Where(fix => !taken.Contains(fix.Id)) : [],
            .. hasCoordinator ? HubSites.In(home, [], []).Select(outlet => new MoveCoordinator(network.Coordinator, outlet)) : [],
            .. Enumerable.Range(network.Radio.FirstChannel, network.Radio.LastChannel - network.Radio.FirstChannel + 1)
                .Where(channel => channel != network.Channel && !home.AccessPoints.IsEmpty)
                .Select(channel => new ChangeChannel(network.Name, channel)),
        ];
    }

    /// <summary>Whether two networks use the same band.</summary>
    public static bool IsSameBand(Network first, Network second) =>
        Math.Max(first.Carrier.Megahertz, second.Carrier.Megahertz) < SameBandRatio * Math.Min(first.Carrier.Megahertz, second.Carrier.Megahertz);

    private static IEnumerable<Fix> OfPlace(Home home, Network network, Device device)
    {
        double highestMetres = home.FloorPlan.Storey(device.Storey).CeilingMetres - BelowCeilingMetres;
        bool isPlug = IsPluggedIn(device), isWired = device.Power == PowerSource.Mains && !isPlug;
        return
        [
            .. device.Power == PowerSource.Battery
                ? HeightsMetres.Where(height => height >= device.HeightMetres + LeastRiseMetres && height <= highestMetres)
                    .Select(height => new RaiseDevice(device.Id, height))
                : [],
            .. network.LossOf(device.Mounting) > Decibels.Zero ? [new UnboxDevice(device.Id, device.Mounting, isWired)] : ImmutableArray<Fix>.Empty,
            .. isPlug ? OutletsNear(home, device).Select(outlet => new MoveToOutlet(device.Id, outlet)) : [],
        ];
    }

    /// <summary>Whether a device sits in an outlet, by what the home calls it: only then can it be moved without an electrician.</summary>
    private static bool IsPluggedIn(Device device) =>
        device.Power == PowerSource.Mains
        && (device.Kind.Contains("plug", StringComparison.OrdinalIgnoreCase) || device.Kind.Contains("repeater", StringComparison.OrdinalIgnoreCase));

    /// <summary>The outlets of the device's room and of those that share a wall with it; without rooms, of the storey.</summary>
    private static IEnumerable<Outlet> OutletsNear(Home home, Device device)
    {
        IEnumerable<Outlet> onStorey = home.Outlets.Where(outlet => outlet.Storey == device.Storey && outlet.Point != device.Point);
        if (device.Room is not { } room) return onStorey;

        HashSet<RoomName> near = [room, .. home.FloorPlan.Storey(device.Storey).Walls.Where(wall => wall.Rooms.Contains(room)).SelectMany(wall => wall.Rooms)];
        return onStorey.Where(outlet => outlet.Room is { } other && near.Contains(other));
    }

    private static IEnumerable<string> DoorsOn(Link? link) =>
        link is null ? [] : link.PathLoss.Items.Where(item => item.Kind == LossKind.Door).Select(item => item.Name).Distinct(StringComparer.Ordinal);
}
