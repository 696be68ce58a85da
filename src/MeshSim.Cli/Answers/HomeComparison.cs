using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Studies;
using MeshSim.Studies.Changes;

namespace MeshSim.Cli.Answers;

/// <summary>Two homes side by side.</summary>
/// <param name="Before">The home before.</param>
/// <param name="After">The home after.</param>
/// <param name="Options">Model, step and height.</param>
/// <param name="Changes">What somebody changed.</param>
/// <param name="Networks">What came of it in each network of both that was asked for.</param>
internal sealed record HomeComparison(Home Before, Home After, StudyOptions Options, HomeChanges Changes, ImmutableArray<NetworkChanges> Networks)
{
    /// <summary>Whether anything got worse.</summary>
    public bool IsWorse => Networks.Any(network => network.IsWorse);
}
