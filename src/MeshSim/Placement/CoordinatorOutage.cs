using System.Collections.Immutable;
using MeshSim.Devices;

namespace MeshSim.Placement;

/// <summary>What leaves a coordinator without power.</summary>
public enum PowerLoss
{
    /// <summary>The state turns it off by name: it would be off at any other place too.</summary>
    ByName,

    /// <summary>The circuit that feeds it is off.</summary>
    Circuit,

    /// <summary>The manual switch that feeds it is off.</summary>
    Switch,
}

/// <summary>A state in which the coordinator of a network has no power, so that nobody can be served, whatever is plugged in.</summary>
/// <param name="State">The state.</param>
/// <param name="Cause">What takes its power.</param>
/// <param name="Source">The circuit or the switch; null when it is turned off by name.</param>
/// <param name="OutletsWithPower">Beside how many outlets of the home it would have power in this state.</param>
public sealed record CoordinatorOutage(string State, PowerLoss Cause, string? Source, int OutletsWithPower)
{
    /// <summary>Those of some states in which the coordinator of a network has no power.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="states">The states.</param>
    public static ImmutableArray<CoordinatorOutage> Among(Home home, Network network, IEnumerable<State> states)
    {
        ArgumentNullException.ThrowIfNull(home);
        ArgumentNullException.ThrowIfNull(network);
        return home.DevicesOf(network).FirstOrDefault(device => device.Id == network.Coordinator) is { } coordinator
            ? [.. states.Where(state => state.TurnsOff(coordinator)).Select(state => Of(home, coordinator, state))]
            : [];
    }

    private static CoordinatorOutage Of(Home home, Device coordinator, State state)
    {
        (PowerLoss cause, string? source) =
            state.DevicesOff.Contains(coordinator.Id) ? (PowerLoss.ByName, null)
            : coordinator.Circuit is { } circuit && state.CircuitsOff.Contains(circuit) ? (PowerLoss.Circuit, circuit)
            : (PowerLoss.Switch, coordinator.SwitchedBy);
        return new(state.Name, cause, source, home.Outlets.Count(outlet => !state.TurnsOff(HubSites.MovedTo(home, coordinator, outlet))));
    }
}
