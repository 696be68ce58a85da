using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Propagation;
using MeshSim.Radio;

namespace MeshSim.Mesh.Routers;

/// <summary>What a mains device that does not route in a network would do for it if it did.</summary>
public sealed record NewRouter
{
    /// <summary>The device whose place, mounting and mains connection a router would have.</summary>
    public required DeviceId Device { get; init; }

    /// <summary>The network that it is in now.</summary>
    public required NetworkName Network { get; init; }

    /// <summary>Devices that would have a route only then.</summary>
    public required ImmutableArray<DeviceId> Reached { get; init; }

    /// <summary>Devices that have one way now and would have two without a shared router.</summary>
    public required ImmutableArray<DeviceId> SecondWay { get; init; }

    /// <summary>The manual switch that would take its power, or null.</summary>
    public string? SwitchedBy { get; init; }
}

/// <summary>Which mains devices would help a network most if they routed in it.</summary>
public static class NewRouters
{
    /// <summary>Who is asked: mains devices that are on, of other networks or set up as end devices in this one; nobody in a star.</summary>
    public static ImmutableArray<Device> Candidates(Home home, Network network, State? state) => network.Radio.Topology == Topology.Star
        ? []
        : [.. home.Devices.Where(device =>
            device.Power == PowerSource.Mains
            && state?.TurnsOff(device) != true
            && (device.Network != network.Name || device.Role == Role.EndDevice))];

    /// <summary>
    /// Those that would help, each alone, the greatest help first: devices newly reached, then devices with a second way, then id.
    /// Each is given the profile's transmit power and a router's part; place and mounting stay.
    /// </summary>
    /// <param name="home">The home.</param>
    /// <param name="network">The network that would gain.</param>
    /// <param name="graph">Its graph in the state.</param>
    /// <param name="model">The path-loss model in the state.</param>
    /// <param name="candidates">Who is asked.</param>
    public static ImmutableArray<NewRouter> Of(Home home, Network network, MeshGraph graph, IPathLossModel model, ImmutableArray<Device> candidates)
    {
        var before = new MeshStanding(graph);
        return
        [
            .. candidates.Select(device => Of(device, before, WithRouter(home, network, graph, model, device)))
                .Where(router => router.Reached.Length + router.SecondWay.Length > 0)
                .OrderByDescending(router => router.Reached.Length)
                .ThenByDescending(router => router.SecondWay.Length)
                .ThenBy(router => router.Device),
        ];
    }

    private static NewRouter Of(Device device, MeshStanding before, MeshGraph withRouter)
    {
        var after = new MeshStanding(withRouter);
        IEnumerable<DeviceId> others = before.Devices.Where(other => other != device.Id);
        return new NewRouter
        {
            Device = device.Id,
            Network = device.Network,
            Reached = [.. others.Where(other => after.Reaches(other) && !before.Reaches(other))],
            SecondWay = [.. others.Where(other => before.HasOneWay(other) && !after.HasOneWay(other))],
            SwitchedBy = device.SwitchedBy,
        };
    }

    private static MeshGraph WithRouter(Home home, Network network, MeshGraph graph, IPathLossModel model, Device device)
    {
        if (device.Network == network.Name) return graph.With(device with { Role = Role.Router }, []);

        Device router = device with { Network = network.Name, Role = Role.Router, TransmitPower = null };
        IEnumerable<Device> others = home.DevicesOf(network).Where(other => graph.Devices.Contains(other.Id));
        return graph.With(router, LinkTable.Of(home, network, model, router, others));
    }
}
