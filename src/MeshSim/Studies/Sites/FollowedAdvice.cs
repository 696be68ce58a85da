using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Placement;

namespace MeshSim.Studies.Sites;

/// <summary>A home in which a recommendation was followed.</summary>
public static class FollowedAdvice
{
    /// <summary>Repeaters plugged in as mains routers in the open, and devices kept powered, network by network.</summary>
    /// <param name="home">The home.</param>
    /// <param name="placements">The recommendations.</param>
    public static Home With(Home home, IEnumerable<RepeaterPlacement> placements)
    {
        ArgumentNullException.ThrowIfNull(home);
        ArgumentNullException.ThrowIfNull(placements);
        return WithoutIdle(placements.Aggregate(home, (changed, placement) => With(
            changed, placement.Network, placement.Repeaters.Select(repeater => repeater.Outlet), placement.KeptOn.Select(kept => kept.Device))));
    }

    /// <summary>The hub at its best site, and what each of its networks needs there.</summary>
    /// <param name="home">The home.</param>
    /// <param name="hub">The recommendation.</param>
    public static Home With(Home home, HubPlacement hub)
    {
        ArgumentNullException.ThrowIfNull(hub);
        return WithoutIdle(hub.Best.Networks.Aggregate(
            WithHubAt(home, hub.Networks, hub.Best.Outlet),
            (changed, network) => With(changed, network.Network, network.Repeaters, network.KeptOn)));
    }

    /// <summary>The coordinators of some networks beside an outlet, in the open.</summary>
    /// <param name="home">The home.</param>
    /// <param name="networks">The networks.</param>
    /// <param name="site">The outlet; null leaves them where they are.</param>
    public static Home WithHubAt(Home home, ImmutableArray<NetworkName> networks, Outlet? site)
    {
        ArgumentNullException.ThrowIfNull(home);
        return site is null
            ? home
            : home.Networks.Where(network => networks.Contains(network.Name))
                .Aggregate(home, (changed, network) => new MoveCoordinator(network.Coordinator, site).On(changed));
    }

    private static Home With(Home home, NetworkName network, IEnumerable<Outlet> repeaters, IEnumerable<DeviceId> keptOn)
    {
        foreach (Outlet outlet in repeaters)
        {
            Home added = new AddRepeater(network, outlet).On(home);
            Device repeater = added.Devices[^1] with { Name = $"repeater at {outlet.Id}" };
            home = added with { Devices = added.Devices.SetItem(added.Devices.Length - 1, repeater with { Id = Unused(home, repeater.Id, network) }) };
        }

        foreach (DeviceId kept in keptOn)
            home = new KeepPowered(kept, home.Devices.First(device => device.Id == kept).SwitchedBy).On(home);
        return home;
    }

    /// <summary>
    /// States without the switches and circuits that nothing is on any more: the last device was fed past the switch, or the hub has
    /// left the circuit, and a state may only name what is there.
    /// </summary>
    private static Home WithoutIdle(Home home)
    {
        HashSet<string?> switches = [.. home.Devices.Select(device => device.SwitchedBy)];
        HashSet<string?> circuits =
        [
            .. home.Devices.Select(device => device.Circuit), .. home.Outlets.Select(outlet => outlet.Circuit), .. home.Circuits.Select(circuit => circuit.Name),
        ];
        return home with
        {
            States =
            [
                .. home.States.Select(state => state with
                {
                    SwitchesOff = state.SwitchesOff.RemoveAll(name => !switches.Contains(name)),
                    CircuitsOff = state.CircuitsOff.RemoveAll(name => !circuits.Contains(name)),
                }),
            ],
        };
    }

    /// <summary>Another network may have a repeater at the same outlet, through an adaptor.</summary>
    private static DeviceId Unused(Home home, DeviceId wanted, NetworkName network)
    {
        HashSet<DeviceId> taken = [.. home.Devices.Select(device => device.Id)];
        DeviceId id = taken.Contains(wanted) ? new($"{wanted}-{network}") : wanted;
        for (int number = 2; taken.Contains(id); number++) id = new(FormattableString.Invariant($"{wanted}-{network}-{number}"));
        return id;
    }
}
