using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>Everything that is answered about one network.</summary>
/// <param name="Coverage">Links and routes.</param>
/// <param name="Placement">Where repeaters should go.</param>
/// <param name="Maps">Where it is dark, a map for each storey asked for.</param>
internal sealed record NetworkAnswer(NetworkCoverage Coverage, RepeaterPlacement Placement, ImmutableArray<MarginMap> Maps)
{
    /// <summary>Answers everything about each network of a request, and names each step as it begins.</summary>
    public static ImmutableArray<NetworkAnswer> All(StudyRequest request, ImmutableArray<Storey> storeys, Action<string> step) =>
        [.. request.Networks.Select(network =>
        {
            step($"Links of {network.Name}");
            NetworkCoverage coverage = CoverageStudy.Run(request.Home, network, request.Options);
            step($"Repeaters of {network.Name}");
            RepeaterPlacement placement = CoverageStudy.Repeaters(coverage, request.Options);
            ImmutableArray<MarginMap> maps = [.. storeys.Select(storey =>
            {
                step($"Map of {network.Name}, {storey.Name}");
                return CoverageStudy.Map(coverage, storey.Name, request.Options);
            })];
            return new NetworkAnswer(coverage, placement, maps);
        })];
}
