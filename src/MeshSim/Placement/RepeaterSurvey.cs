using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Mesh;
using MeshSim.Propagation;

namespace MeshSim.Placement;

/// <summary>The repeater problem of one network together with who its nodes are.</summary>
/// <param name="Situations">Everyday first, then the states that must hold.</param>
/// <param name="Devices">The devices that have power in one of them, in the home's order: the first nodes.</param>
/// <param name="Outlets">The outlets considered, in the home's order: the nodes that follow.</param>
/// <param name="Kept">
/// The routers that a held state turns off by name or by a manual switch, and that could be kept powered instead: the last nodes, in
/// the home's order. They are chosen like outlets, and are there only in the states that turn the device off.
/// </param>
public sealed record RepeaterSurvey(
    ImmutableArray<Situation> Situations, ImmutableArray<Device> Devices, ImmutableArray<Outlet> Outlets, ImmutableArray<Device> Kept)
{
    /// <summary>The problem of everyday.</summary>
    public RepeaterProblem Problem => Situations[0].Problem;

    /// <summary>How wrong the everyday margin between two nodes may be.</summary>
    public Func<int, int, MarginUncertainty> Uncertainty { get; private init; } = (_, _) => default;

    /// <summary>
    /// Surveys a network. A repeater is a router of the network at an outlet, mounted on the surface without loss, that sends with
    /// the profile's power. An outlet whose circuit is off everyday or in which a router of the network is plugged in is not considered,
    /// and in a star none is: nobody would use a repeater.
    /// </summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="graphs">Its links in any state.</param>
    /// <param name="everyday">The state planned for; null when everything is on and every door closed. The coordinator has power.</param>
    /// <param name="held">States in which devices must be reached too. The coordinator has power in each.</param>
    /// <exception cref="ArgumentException">The coordinator has no power in one of the states.</exception>
    public static RepeaterSurvey Of(Home home, Network network, StateGraphs graphs, State? everyday, ImmutableArray<State> held) =>
        Of(home, network, graphs, everyday, held, []);

    /// <summary>The same with some outlets considered although a router of the network is plugged in there.</summary>
    internal static RepeaterSurvey Of(Home home, Network network, StateGraphs graphs, State? everyday, ImmutableArray<State> held, ImmutableHashSet<OutletId> shared)
    {
        if (held.Prepend<State?>(everyday).Any(state => graphs.In(state).Coordinator < 0)) throw new ArgumentException("the coordinator must have power", nameof(graphs));
        RepeaterSurvey survey = new SiteSurvey(home, network, graphs, everyday, held, [], shared).WithHubInPlace();
        return survey with { Uncertainty = survey.UncertaintyIn(home, network, graphs.ModelIn(everyday)) };
    }

    /// <summary>Per choice what it costs: the outlets first, then the devices kept powered.</summary>
    public ImmutableArray<int> CostsOf(PlacementCosts costs)
    {
        ArgumentNullException.ThrowIfNull(costs);
        return [.. Outlets.Select(_ => costs.Repeater), .. Kept.Select(_ => costs.SwitchGivenUp)];
    }

    /// <summary>The outlets among some choices.</summary>
    public ImmutableArray<Outlet> OutletsOf(IEnumerable<int> choices) =>
        [.. choices.Where(choice => choice < Outlets.Length).Select(choice => Outlets[choice])];

    /// <summary>The devices kept powered among some choices.</summary>
    public ImmutableArray<Device> KeptOf(IEnumerable<int> choices) =>
        [.. choices.Where(choice => choice >= Outlets.Length).Select(choice => Kept[choice - Outlets.Length])];

    /// <summary>A node in words: what it is, its id, and its room.</summary>
    public string Describe(int node)
    {
        (string what, string id, string? room) = node < Devices.Length ? Words(Devices[node])
            : node < Devices.Length + Outlets.Length ? Words(Outlets[node - Devices.Length])
            : Words(Kept[node - Devices.Length - Outlets.Length]);
        return room is null ? $"{what} {id}" : $"{what} {id} in {room}";
    }

    private static (string What, string Id, string? Room) Words(Outlet outlet) => ("outlet", outlet.Id.Value, outlet.Room?.Value);

    private static (string What, string Id, string? Room) Words(Device device) => (Words(device.Role), device.Id.Value, device.Room?.Value);

    private Func<int, int, MarginUncertainty> UncertaintyIn(Home home, Network network, IPathLossModel model)
    {
        var uncertainties = new MarginUncertainties(home, network);
        return (a, b) => uncertainties.Of(model.Between(PlaceOf(a), PlaceOf(b)), [.. new[] { DeviceAt(a), DeviceAt(b) }.OfType<Device>().Select(device => device.Mounting)]);

        Position PlaceOf(int node) => DeviceAt(node) is { } device ? home.PositionOf(device) : home.PositionOf(Outlets[node - Devices.Length]);
    }

    /// <summary>The device at a node; null at an outlet.</summary>
    internal Device? DeviceAt(int node) => node < Devices.Length ? Devices[node]
        : node < Devices.Length + Outlets.Length ? null
        : Kept[node - Devices.Length - Outlets.Length];

    private static string Words(Role role) => role switch
    {
        Role.Coordinator => "coordinator",
        Role.Router => "router",
        _ => "end device",
    };
}
