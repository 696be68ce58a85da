using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Propagation.Pairs;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Placement;

/// <summary>The repeater problem of one network together with who its nodes are.</summary>
/// <param name="Situations">Everyday first, then the states that must hold.</param>
/// <param name="Devices">The devices that have power in one of them, in the home's order: the first nodes.</param>
/// <param name="Outlets">The outlets considered, in the home's order: the nodes that follow.</param>
public sealed record RepeaterSurvey(ImmutableArray<Situation> Situations, ImmutableArray<Device> Devices, ImmutableArray<Outlet> Outlets)
{
    /// <summary>The problem of everyday.</summary>
    public RepeaterProblem Problem => Situations[0].Problem;

    /// <summary>
    /// Surveys a network. A repeater is a router of the network at an outlet, mounted on the surface without loss, that sends with
    /// the profile's power. An outlet whose circuit is off everyday is not considered, and in a star none is: nobody would use a
    /// repeater.
    /// </summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="graphs">Its links in any state.</param>
    /// <param name="everyday">The state planned for; null when everything is on and every door closed. The coordinator has power.</param>
    /// <param name="held">States in which devices must be reached too. The coordinator has power in each.</param>
    /// <exception cref="ArgumentException">The coordinator has no power in one of the states.</exception>
    public static RepeaterSurvey Of(Home home, Network network, StateGraphs graphs, State? everyday, ImmutableArray<State> held)
    {
        State?[] states = [everyday, .. held];
        if (Array.Exists(states, state => graphs.In(state).Coordinator < 0)) throw new ArgumentException("the coordinator must have power", nameof(graphs));

        ImmutableArray<Device> devices =
            [.. home.DevicesOf(network).Where(device => Array.Exists(states, state => state?.TurnsOff(device) != true))];
        ImmutableArray<Outlet> outlets =
            network.Radio.Topology == Topology.Star ? [] : [.. home.Outlets.Where(outlet => HasPower(outlet, everyday))];
        Dictionary<MeshGraph, RepeaterProblem> problems = [];
        return new([.. states.Select(SituationIn)], devices, outlets);

        Situation SituationIn(State? state)
        {
            // Power decides who takes part, doors alone decide the links: states with the same doors share their graph.
            MeshGraph graph = graphs.WithAllPower(state);
            if (!problems.TryGetValue(graph, out RepeaterProblem? problem))
                problems[graph] = problem = ProblemOf(home, network, graph, graphs.ModelIn(state), devices, outlets);
            var devicesOff = Enumerable.Range(0, devices.Length).Where(i => state?.TurnsOff(devices[i]) == true);
            var outletsOff = Enumerable.Range(0, outlets.Length).Where(i => !HasPower(outlets[i], state)).Select(problem.NodeOf);
            return new(problem, [.. devicesOff, .. outletsOff]);
        }
    }

    /// <summary>A node in words: what it is, its id, and its room.</summary>
    public string Describe(int node)
    {
        (string what, string id, string? room) = node < Devices.Length
            ? (Words(Devices[node].Role), Devices[node].Id.Value, Devices[node].Room?.Value)
            : ("outlet", Outlets[node - Devices.Length].Id.Value, Outlets[node - Devices.Length].Room?.Value);
        return room is null ? $"{what} {id}" : $"{what} {id} in {room}";
    }

    private static RepeaterProblem ProblemOf(
        Home home, Network network, MeshGraph graph, IPathLossModel model, ImmutableArray<Device> devices, ImmutableArray<Outlet> outlets)
    {
        Dictionary<(DeviceId, DeviceId), Decibels> linked = graph.Links.ToDictionary(link => (link.From, link.To), link => link.Margin);
        Position[] places = [.. devices.Select(home.PositionOf), .. outlets.Select(home.PositionOf)];
        PairLosses losses = model.TotalsAmong(places, CancellationToken.None);
        LinkBudget budget = new(network.Radio, home.Parameters.Shadowing);
        Surroundings surroundings = new(home, network, model, budget);
        PowerLevel[] needed =
        [
            .. devices.Select(device => surroundings.At(device).PlanningLevel),
            .. outlets.Select(outlet => surroundings.At(home.PositionOf(outlet)).PlanningLevel),
        ];
        ImmutableArray<bool> relays = [.. devices.Select(device => graph.Relays(graph.Devices.IndexOf(device.Id)))];
        int coordinator = devices.Select(device => device.Id).ToImmutableArray().IndexOf(network.Coordinator);
        return new(relays, coordinator, outlets.Length, network.HopLimit, graph.DesignMargin, Margin);

        Decibels Margin(int a, int b)
        {
            // Among devices the links are known, and must agree with the routes to the last digit.
            if (b < devices.Length) return linked[(devices[a].Id, devices[b].Id)];
            (PowerLevel power, Decibels mounting) = a < devices.Length ? EndAt(devices[a]) : (network.Radio.TransmitPower, Decibels.Zero);
            Decibels loss = losses[a, b] + mounting;
            return budget.Margin(power, network.Radio.TransmitPower, loss, needed[a], needed[b]);
        }

        (PowerLevel Power, Decibels Mounting) EndAt(Device device) =>
            (device.TransmitPower ?? network.Radio.TransmitPower, device.Mounting.LossAt(network.Carrier));
    }

    private static bool HasPower(Outlet outlet, State? state) =>
        state is null || outlet.Circuit is not { } circuit || !state.CircuitsOff.Contains(circuit);

    private static string Words(Role role) => role switch
    {
        Role.Coordinator => "coordinator",
        Role.Router => "router",
        _ => "end device",
    };
}
