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
/// <param name="Problem">The problem.</param>
/// <param name="Devices">The devices that have power, in the home's order: the first nodes.</param>
/// <param name="Outlets">The outlets considered, in the home's order: the nodes that follow.</param>
public sealed record RepeaterSurvey(RepeaterProblem Problem, ImmutableArray<Device> Devices, ImmutableArray<Outlet> Outlets)
{
    /// <summary>
    /// Surveys a network. A repeater is a router of the network at an outlet, mounted on the surface without loss, that sends with
    /// the profile's power. An outlet whose circuit is off is not considered, and in a star none is: nobody would use a repeater.
    /// </summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="graph">Its devices that have power, its coordinator among them, and the links among them.</param>
    /// <param name="model">The path-loss model of the building, doors open or closed as the caller wants them.</param>
    /// <param name="state">Which circuits are off; null when none is.</param>
    /// <param name="designMargin">The margin that a link must have to count.</param>
    /// <exception cref="ArgumentException">The coordinator has no power.</exception>
    public static RepeaterSurvey Of(
        Home home, Network network, MeshGraph graph, IPathLossModel model, State? state, Decibels designMargin)
    {
        if (graph.Coordinator < 0) throw new ArgumentException("the coordinator must have power", nameof(graph));

        Dictionary<DeviceId, Device> byId = home.DevicesOf(network).ToDictionary(device => device.Id);
        ImmutableArray<Device> devices = [.. graph.Devices.Select(id => byId[id])];
        ImmutableArray<Outlet> outlets = graph.Topology == Topology.Star ? [] : [.. home.Outlets.Where(outlet => HasPower(outlet, state))];
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

        ImmutableArray<bool> relays = [.. devices.Select((_, node) => graph.Relays(node))];
        RepeaterProblem problem = new(relays, graph.Coordinator, outlets.Length, network.HopLimit, designMargin, Margin);
        return new(problem, devices, outlets);

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

    /// <summary>A node in words: what it is, its id, and its room.</summary>
    public string Describe(int node)
    {
        (string what, string id, string? room) = node < Devices.Length
            ? (Words(Devices[node].Role), Devices[node].Id.Value, Devices[node].Room?.Value)
            : ("outlet", Outlets[node - Devices.Length].Id.Value, Outlets[node - Devices.Length].Room?.Value);
        return room is null ? $"{what} {id}" : $"{what} {id} in {room}";
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
