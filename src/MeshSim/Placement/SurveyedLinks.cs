using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Propagation.Pairs;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Placement;

/// <summary>
/// The links of one network with the doors of one state: among its devices, from every outlet, from the devices that could be kept
/// powered, and from the coordinator at other places.
/// </summary>
internal sealed class SurveyedLinks
{
    private readonly Network network;
    private readonly MeshGraph graph;
    private readonly IPathLossModel model;
    private readonly PlacementNodes nodes;
    private readonly LinkBudget budget;
    private readonly Dictionary<(DeviceId, DeviceId), Decibels> linked;
    private readonly PairLosses losses;
    private readonly Position[] places;
    private readonly (PowerLevel Power, Decibels Mounting, PowerLevel Needed)[] ends;
    private readonly Mounting?[] mountings;
    private readonly MarginUncertainties? dearer;
    private readonly int coordinator;
    private readonly Lazy<RepeaterProblem> inPlace;

    /// <summary>Computes all links.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="graph">Its links with all devices on.</param>
    /// <param name="model">The path-loss model with the same doors.</param>
    /// <param name="nodes">Who the nodes are.</param>
    /// <param name="dearer">What every loss is one standard deviation dearer by, for the pessimistic case; null for losses as computed.</param>
    public SurveyedLinks(Home home, Network network, MeshGraph graph, IPathLossModel model, PlacementNodes nodes, MarginUncertainties? dearer)
    {
        (this.network, this.graph, this.model, this.nodes, this.dearer) = (network, graph, model, nodes, dearer);
        budget = new(network.Radio, home.ParametersOf(network).Shadowing);
        linked = graph.Links.ToDictionary(link => (link.From, link.To), link => link.Margin);
        inPlace = new(ProblemInPlace);
        coordinator = nodes.Devices.Select(device => device.Id).ToImmutableArray().IndexOf(network.Coordinator);
        Surroundings surroundings = new(home, network, model, budget);
        PowerLevel ownPower = network.Radio.TransmitPower;
        places =
        [
            .. nodes.Devices.Select(home.PositionOf), .. nodes.Outlets.Select(home.PositionOf), .. nodes.Kept.Select(home.PositionOf),
            .. nodes.Sites.Select(home.PositionOf),
        ];
        losses = model.TotalsAmong(places, CancellationToken.None);
        Device[] moved = [.. nodes.Sites.Select(site => HubSites.MovedTo(home, nodes.Devices[coordinator], site))];
        mountings =
        [
            .. nodes.Devices.Select(device => device.Mounting), .. nodes.Outlets.Select(_ => (Mounting?)null), .. nodes.Kept.Select(device => device.Mounting),
            .. moved.Select(device => device.Mounting),
        ];
        ends =
        [
            .. nodes.Devices.Select(EndAt),
            .. nodes.Outlets.Select(outlet => (ownPower, Decibels.Zero, surroundings.At(home.PositionOf(outlet)).PlanningLevel)),
            .. nodes.Kept.Select(EndAt),
            .. moved.Select(EndAt),
        ];

        (PowerLevel Power, Decibels Mounting, PowerLevel Needed) EndAt(Device device) =>
            (device.TransmitPower ?? ownPower, network.LossOf(device.Mounting), surroundings.At(device).PlanningLevel);
    }

    /// <summary>The problem with the coordinator where it is.</summary>
    public RepeaterProblem Problem => inPlace.Value;

    /// <summary>The problem with the coordinator at one of the sites; several threads may ask.</summary>
    public RepeaterProblem WithHubAt(int site) =>
        Problem.WithCoordinatorMoved(other => Planned(Between(other, nodes.Count + site), other, nodes.Count + site));

    private RepeaterProblem ProblemInPlace()
    {
        ImmutableArray<bool> relays = [.. nodes.Devices.Select(device => graph.Relays(graph.Devices.IndexOf(device.Id)))];
        return new(relays, coordinator, nodes.Outlets.Length + nodes.Kept.Length, network.HopLimit, graph.DesignMargin, (a, b) => Planned(Margin(a, b), a, b));
    }

    private Decibels Margin(int a, int b)
    {
        // Among devices the links are known, and must agree with the routes to the last digit.
        if (nodes.DeviceAt(a) is not { } first || nodes.DeviceAt(b) is not { } second) return Between(a, b);
        if (first.Id == second.Id) return new(double.NegativeInfinity);
        return linked.TryGetValue((first.Id, second.Id), out Decibels margin) ? margin : linked[(second.Id, first.Id)];
    }

    /// <summary>The margin that is planned with: in the pessimistic case everything on the way is dearer at once.</summary>
    private Decibels Planned(Decibels margin, int a, int b) => dearer is null
        ? margin
        : margin - dearer.AllDearer(model.Between(places[a], places[b]), [.. new[] { mountings[a], mountings[b] }.OfType<Mounting>()]);

    private Decibels Between(int a, int b)
    {
        (PowerLevel power, Decibels mounting, PowerLevel needed) = ends[a];
        (PowerLevel otherPower, Decibels otherMounting, PowerLevel otherNeeded) = ends[b];
        Decibels path = places[a] == places[b] ? model.TotalBetween(places[a], places[b]) : losses[a, b];
        return budget.Margin(power, otherPower, path + mounting + otherMounting, needed, otherNeeded);
    }
}
