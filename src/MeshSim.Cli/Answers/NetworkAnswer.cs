using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Studies;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Answers;

/// <summary>Everything that is answered about one network.</summary>
/// <param name="Coverage">Links and routes.</param>
/// <param name="Placement">Where repeaters should go.</param>
/// <param name="Maps">Where it is dark, a map for each storey asked for.</param>
/// <param name="Routers">Who carries it.</param>
/// <param name="Rehearsal">What happens when something is off, and by chance.</param>
internal sealed record NetworkAnswer(
    NetworkCoverage Coverage,
    RepeaterPlacement Placement,
    ImmutableArray<MarginMap> Maps,
    NetworkRouters Routers,
    NetworkRehearsal Rehearsal)
{
    /// <summary>More dropouts than this are counted, not explained one by one.</summary>
    private const int MostExplained = 6;

    /// <summary>Why devices have no reliable way and what would help: the first few of them, in the home's order.</summary>
    public ImmutableArray<DeviceExplanation> Explanations { get; init; } = [];

    /// <summary>How firm the recommendation stands.</summary>
    public PlacementReview Review { get; init; } = PlacementReview.Nothing;

    /// <summary>Answers everything about one network.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">A network of it.</param>
    /// <param name="storeys">The storeys to map.</param>
    /// <param name="options">Model, state, step and height.</param>
    /// <param name="step">Told each step as it begins.</param>
    public static NetworkAnswer Of(Home home, Network network, ImmutableArray<Storey> storeys, StudyOptions options, Action<string> step)
    {
        NetworkMaps maps = NetworkMaps.Of(home, network, storeys, options, step);
        step($"Repeaters of {network.Name}");
        RepeaterPlacement placement = CoverageStudy.Repeaters(maps.Coverage, options);
        step($"Zones and chances of {network.Name}");
        PlacementReview review = ReviewStudy.Repeaters(maps.Coverage, placement, new());
        step($"Routers and rehearsals of {network.Name}");
        return new(
            maps.Coverage,
            placement,
            maps.Maps,
            ResilienceStudy.Routers(home, network, options),
            ResilienceStudy.Rehearse(home, network, options, new()))
        {
            Review = review,
        };
    }

    /// <summary>The same with its dropouts explained.</summary>
    /// <param name="options">Model and state.</param>
    /// <param name="step">Told each step as it begins.</param>
    public NetworkAnswer Explained(StudyOptions options, Action<string> step)
    {
        var explanations = ImmutableArray.CreateBuilder<DeviceExplanation>();
        StateGraphs graphs = new(Coverage.Home, Coverage.Network, Coverage.Model);
        foreach (DeviceReach reach in CoverageWords.Unreached(Coverage).Take(MostExplained))
        {
            step($"Trying what helps {reach.Device}");
            explanations.Add(ExplainStudy.Device(Coverage, graphs, Coverage.Home.Devices.First(device => device.Id == reach.Device), options));
        }

        return this with { Explanations = explanations.ToImmutable() };
    }
}
