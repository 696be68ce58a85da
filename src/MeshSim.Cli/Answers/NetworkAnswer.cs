using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Cli.Answers;

/// <summary>Everything that is answered about one network.</summary>
/// <param name="Coverage">Links and routes.</param>
/// <param name="Placement">Where repeaters should go.</param>
/// <param name="Maps">Where it is dark, a map for each storey asked for.</param>
internal sealed record NetworkAnswer(NetworkCoverage Coverage, RepeaterPlacement Placement, ImmutableArray<MarginMap> Maps)
{
    /// <summary>Answers everything about each network.</summary>
    /// <param name="home">The home.</param>
    /// <param name="networks">The networks asked for.</param>
    /// <param name="storeys">The storeys to map.</param>
    /// <param name="options">Model, state, step and height.</param>
    /// <param name="step">Told each step as it begins.</param>
    public static ImmutableArray<NetworkAnswer> All(
        Home home, ImmutableArray<Network> networks, ImmutableArray<Storey> storeys, StudyOptions options, Action<string> step) =>
        [.. networks.Select(network => Of(home, network, storeys, options, step))];

    private static NetworkAnswer Of(Home home, Network network, ImmutableArray<Storey> storeys, StudyOptions options, Action<string> step)
    {
        step($"Links of {network.Name}");
        NetworkCoverage coverage = CoverageStudy.Run(home, network, options);
        step($"Repeaters of {network.Name}");
        RepeaterPlacement placement = CoverageStudy.Repeaters(coverage, options);
        var maps = ImmutableArray.CreateBuilder<MarginMap>();
        foreach (Storey storey in storeys)
        {
            step($"Map of {network.Name}, {storey.Name}");
            maps.Add(CoverageStudy.Map(coverage, storey.Name, options));
        }

        return new(coverage, placement, maps.ToImmutable());
    }
}
