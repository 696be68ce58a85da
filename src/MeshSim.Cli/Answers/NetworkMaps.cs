using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Studies;

namespace MeshSim.Cli.Answers;

/// <summary>Who is reached in one network, and where it is dark.</summary>
/// <param name="Coverage">Links and routes.</param>
/// <param name="Maps">A map for each storey asked for.</param>
internal sealed record NetworkMaps(NetworkCoverage Coverage, ImmutableArray<MarginMap> Maps)
{
    /// <summary>Computes links, routes and maps of one network.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">A network of it.</param>
    /// <param name="storeys">The storeys to map.</param>
    /// <param name="options">Model, state, step and height.</param>
    /// <param name="step">Told each step as it begins.</param>
    public static NetworkMaps Of(Home home, Network network, ImmutableArray<Storey> storeys, StudyOptions options, Action<string> step)
    {
        step($"Links of {network.Name}");
        NetworkCoverage coverage = CoverageStudy.Run(home, network, options);
        var maps = ImmutableArray.CreateBuilder<MarginMap>();
        foreach (Storey storey in storeys)
        {
            step($"Map of {network.Name}, {storey.Name}");
            maps.Add(CoverageStudy.Map(coverage, storey.Name, options));
        }

        return new(coverage, maps.ToImmutable());
    }
}
