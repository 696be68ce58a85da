using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;

namespace MeshSim.Studies;

/// <summary>The main flow: from a home to who reaches whom, where it is dark, and where repeaters should go.</summary>
public static class CoverageStudy
{
    /// <summary>Links and routes of one network.</summary>
    /// <exception cref="ArgumentException">The state opens a door that the home does not have.</exception>
    public static NetworkCoverage Run(Home home, Network network, StudyOptions options)
    {
        IPathLossModel model = ModelOf(home, network, options);
        ImmutableArray<Link> links = LinkTable.Compute(home, network, model, options.State);
        Decibels designMargin = home.ParametersOf(network).DesignMargin;
        var commands = new Commands(network.Radio, home.ParametersOf(network).Shadowing, links);
        return new NetworkCoverage
        {
            Home = home,
            Network = network,
            Model = options.Model,
            State = options.State,
            DesignMargin = designMargin,
            Links = links,
            Devices = [.. Routing.ReachOf(GraphOf(home, network, options.State, links, designMargin)).Select(commands.On)],
        };
    }

    /// <summary>Where one storey is dark, given the routes.</summary>
    /// <exception cref="ArgumentException">The home has no such storey, or it has neither rooms nor walls.</exception>
    public static MarginMap Map(NetworkCoverage coverage, StoreyName storey, StudyOptions options)
    {
        Home home = coverage.Home;
        var grid = FieldGrid.Over(home.FloorPlan, storey, options.GridStepMetres, options.ProbeHeightMetres);
        Field margin = MarginMapping.Over(coverage, grid);
        return new MarginMap
        {
            Network = coverage.Network.Name,
            Storey = storey,
            Margin = margin,
            DesignMargin = coverage.DesignMargin,
            Rooms = [.. home.FloorPlan.Storey(storey).Rooms.Select(room => (room.Name, MarginMapping.DarkShare(room, margin, coverage.DesignMargin)))],
        };
    }

    /// <summary>Where repeaters should go, with the model and state of the coverage, for the goals of the options.</summary>
    public static RepeaterPlacement Repeaters(NetworkCoverage coverage, StudyOptions options)
    {
        (Home home, Network network, State? state) = (coverage.Home, coverage.Network, coverage.State);
        PlacementGoals goals = options.Goals;
        StateGraphs graphs = new(home, network, coverage.Model);
        ImmutableArray<State> held = goals.Held(home, state);
        if (graphs.In(state).Coordinator < 0) return RepeaterAdvice.WithoutCoordinator(home, network, graphs.In(state).Devices, state) with { Goals = goals };

        return RepeaterAdvice.For(home, network, graphs, state, held, goals);
    }

    private static MeshGraph GraphOf(Home home, Network network, State? state, ImmutableArray<Link> links, Decibels designMargin) =>
        new(network, home.DevicesOf(network).Where(device => state?.TurnsOff(device) != true), links, designMargin);

    /// <summary>The path-loss model of a network in a state of the house.</summary>
    internal static IPathLossModel ModelOf(Home home, Network network, StudyOptions options) => home.ModelOf(network, options.Model, options.State);
}
