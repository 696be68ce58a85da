using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Radio;

namespace MeshSim.Placement;

/// <summary>A recommendation together with the survey that it answers, so that more can be asked about it.</summary>
/// <param name="Home">The home.</param>
/// <param name="Network">The network.</param>
/// <param name="Survey">Nodes and margins.</param>
/// <param name="Models">Per situation of the survey the path-loss model, doors as they stand in it.</param>
/// <param name="Names">What the cases are called.</param>
/// <param name="Ways">How many ways are asked for.</param>
/// <param name="Chosen">The recommendation: outlets and devices kept powered, as choices of the survey, in order.</param>
public sealed record SurveyedPlacement(
    Home Home, Network Network, RepeaterSurvey Survey, ImmutableArray<IPathLossModel> Models, ImmutableArray<string?> Names, int Ways, ImmutableArray<int> Chosen)
{
    /// <summary>Surveys the network of a recommendation; null where the coordinator has no power, so that there was nothing to choose.</summary>
    /// <param name="home">The home, its coordinators where they are recommended.</param>
    /// <param name="network">The network.</param>
    /// <param name="graphs">Its links in any state.</param>
    /// <param name="everyday">The state planned for.</param>
    /// <param name="goals">What is asked.</param>
    /// <param name="repeaters">The outlets recommended for it.</param>
    /// <param name="keptOn">The devices that stay powered.</param>
    public static SurveyedPlacement? Of(
        Home home, Network network, StateGraphs graphs, State? everyday, PlacementGoals goals, ImmutableArray<Outlet> repeaters, ImmutableArray<DeviceId> keptOn)
    {
        ArgumentNullException.ThrowIfNull(home);
        ArgumentNullException.ThrowIfNull(graphs);
        ArgumentNullException.ThrowIfNull(goals);
        if (graphs.In(everyday).Coordinator < 0) return null;

        ImmutableArray<State> held = [.. goals.Held(home, everyday).Where(state => graphs.In(state).Coordinator >= 0)];
        RepeaterSurvey survey = RepeaterSurvey.Of(home, network, graphs, everyday, held);
        HashSet<OutletId> outlets = [.. repeaters.Select(outlet => outlet.Id)];
        return new(
            home,
            network,
            survey,
            [.. held.Prepend<State?>(everyday).Select(graphs.ModelIn)],
            [null, .. held.Select(state => state.Name)],
            goals.Ways,
            [
                .. Enumerable.Range(0, survey.Outlets.Length).Where(choice => outlets.Contains(survey.Outlets[choice].Id)),
                .. Enumerable.Range(0, survey.Kept.Length).Where(choice => keptOn.Contains(survey.Kept[choice].Id)).Select(choice => survey.Outlets.Length + choice),
            ]);
    }

    /// <summary>Whatever does all that is asked costs at least this, in the home's units; 0 when nothing is known.</summary>
    public int CostBound { get; init; }

    /// <summary>The devices, and what is chosen: the nodes that exist once the recommendation is followed.</summary>
    public ImmutableArray<int> Present => [.. Enumerable.Range(0, Survey.Devices.Length), .. Chosen.Select(Survey.Problem.NodeOf)];

    /// <summary>Where a node is.</summary>
    public Position PlaceOf(int node) => Survey.DeviceAt(node) is { } device ? Home.PositionOf(device) : Home.PositionOf(Survey.Outlets[node - Survey.Devices.Length]);

    /// <summary>How the ends of a link are hidden; a repeater is not.</summary>
    public Mounting[] MountingsOf(int a, int b) => [.. new[] { Survey.DeviceAt(a), Survey.DeviceAt(b) }.OfType<Device>().Select(device => device.Mounting)];

    /// <summary>
    /// What is asked in each case, of the devices that the recommendation reaches then. The loss of an outlet that is not chosen is
    /// no case.
    /// </summary>
    internal ImmutableArray<(Demand Demand, ReachGraph Graph)> Cases()
    {
        GraphsByMargin graphs = new();
        return
        [
            .. from demand in Demand.Of(Survey.Situations, Ways)
               where demand.LostOutlet is not { } lost || Chosen.Contains(lost - Survey.Devices.Length)
               let graph = graphs.Planned(demand)
               let reached = demand.Reached(graph, graph.Chosen(Chosen))
               where !reached.IsEmpty
               select (demand with { Devices = reached }, graph),
        ];
    }

    /// <summary>What its cases are called.</summary>
    internal CaseNames CaseNames => new(Survey, Names);
}
