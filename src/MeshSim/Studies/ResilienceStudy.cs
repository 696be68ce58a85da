using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Mesh.Outages;
using MeshSim.Mesh.Reliability;
using MeshSim.Mesh.Routers;

namespace MeshSim.Studies;

/// <summary>The mesh under everyday life: who carries it, and what happens when something is off or the radio has a bad day.</summary>
public static class ResilienceStudy
{
    /// <summary>Which mains devices carry a network, and which others would help it if they routed in it.</summary>
    /// <exception cref="ArgumentException">The state opens a door that the home does not have.</exception>
    public static NetworkRouters Routers(Home home, Network network, StudyOptions options)
    {
        var graphs = new StateGraphs(home, network, options.Model);
        MeshGraph graph = graphs.In(options.State);
        ImmutableArray<Device> candidates = NewRouters.Candidates(home, network, options.State);
        return new NetworkRouters
        {
            Coverage = CoverageOf(home, network, options, graph),
            Duties = RouterDuties.Of(home, network, graphs, options.State),
            NewRouters = NewRouters.Of(home, network, graph, graphs.ModelIn(options.State), candidates),
            Considered = candidates.Length,
        };
    }

    /// <summary>What states, switches, circuits, routers and chance do to a network.</summary>
    /// <exception cref="ArgumentException">A state opens a door that the home does not have.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The correlation or the number of draws is outside its range.</exception>
    public static NetworkRehearsal Rehearse(Home home, Network network, StudyOptions options, RehearsalOptions asked)
    {
        var graphs = new StateGraphs(home, network, options.Model);
        MeshGraph graph = graphs.In(options.State);
        var rehearsing = new Rehearsing(graphs, options.State);
        var shadowing = new LinkShadowing(home.ParametersOf(network).Shadowing, asked.Correlation);
        ImmutableArray<Outage> pairs = asked.Pairs ? OutageList.Pairs(home, network, options.State) : [];
        return new NetworkRehearsal
        {
            Coverage = CoverageOf(home, network, options, graph),
            Options = asked,
            Rehearsals = [.. OutageList.Of(home, network, options.State).Concat(pairs).Select(rehearsing.Of)],
            Chances = asked.Draws > 0 ? ConnectionDraws.Estimate(graph, shadowing, asked.Draws, asked.Seed) : [],
        };
    }

    private static NetworkCoverage CoverageOf(Home home, Network network, StudyOptions options, MeshGraph graph) => new()
    {
        Home = home,
        Network = network,
        Model = options.Model,
        State = options.State,
        DesignMargin = graph.DesignMargin,
        Links = graph.Links,
        Devices = Routing.ReachOf(graph),
    };
}
