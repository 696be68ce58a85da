using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Radio;

namespace MeshSim.Mesh.Outages;

/// <summary>What can happen to a network, one thing at a time.</summary>
public static class OutageList
{
    /// <summary>
    /// Named states in the order written; then every manual switch, every mains circuit and every router that concerns the network,
    /// by name; then the coordinator. What is off already is left out.
    /// </summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="during">
    /// The state in which the rest happens; null when everything is on. With a state, it is the only one of the named states.
    /// </param>
    public static ImmutableArray<Outage> Of(Home home, Network network, State? during)
    {
        Device[] on = [.. OnIn(home, network, during)];
        return
        [
            .. home.States.Where(state => during is null || state.Name == during.Name).Select(state => new Outage(OutageKind.State, state.Name, state)),
            .. Names(on, device => device.SwitchedBy).Select(name => new Outage(OutageKind.Switch, name, Adding(during, switches: [name]))),
            .. Names(on, device => device.Circuit).Select(name => new Outage(OutageKind.Circuit, name, Adding(during, circuits: [name]))),
            .. RoutersAmong(on, network).Select(id => new Outage(OutageKind.Router, id.Value, Adding(during, devices: [id]))),
            .. on.Where(device => device.Id == network.Coordinator)
                .Select(hub => new Outage(OutageKind.Hub, hub.Id.Value, Adding(during, devices: [hub.Id]))),
        ];
    }

    /// <summary>Every pair of routers, by id.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="during">The state in which it happens; null when everything is on.</param>
    public static ImmutableArray<Outage> Pairs(Home home, Network network, State? during)
    {
        DeviceId[] routers = [.. RoutersAmong(OnIn(home, network, during), network)];
        return
        [
            .. from first in Enumerable.Range(0, routers.Length)
               from second in Enumerable.Range(first + 1, routers.Length - first - 1)
               select new Outage(OutageKind.Pair, $"{routers[first]} + {routers[second]}", Adding(during, devices: [routers[first], routers[second]])),
        ];
    }

    private static IEnumerable<Device> OnIn(Home home, Network network, State? state) =>
        home.DevicesOf(network).Where(device => state?.TurnsOff(device) != true);

    private static IEnumerable<string> Names(IEnumerable<Device> devices, Func<Device, string?> nameOf) =>
        devices.Select(nameOf).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);

    private static IEnumerable<DeviceId> RoutersAmong(IEnumerable<Device> devices, Network network) =>
        devices.Where(device => network.Radio.Topology == Topology.Mesh && device.Role == Role.Router).Select(device => device.Id).Order();

    private static State Adding(
        State? during, ImmutableArray<DeviceId>? devices = null, ImmutableArray<string>? circuits = null, ImmutableArray<string>? switches = null)
    {
        State state = during ?? new State { Name = "" };
        return state with
        {
            DevicesOff = [.. state.DevicesOff, .. devices ?? []],
            CircuitsOff = [.. state.CircuitsOff, .. circuits ?? []],
            SwitchesOff = [.. state.SwitchesOff, .. switches ?? []],
        };
    }
}
