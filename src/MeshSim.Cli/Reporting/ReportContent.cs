using System.Collections.Immutable;
using MeshSim.Cli.Answers;
using MeshSim.Devices;
using MeshSim.Studies;

namespace MeshSim.Cli.Reporting;

/// <summary>What a report is made from.</summary>
/// <param name="Home">The home.</param>
/// <param name="Notices">What was assumed or moved while reading it.</param>
/// <param name="Options">Model, state, step and height.</param>
/// <param name="Answers">One for each network.</param>
internal sealed record ReportContent(Home Home, ImmutableArray<string> Notices, StudyOptions Options, ImmutableArray<NetworkAnswer> Answers)
{
    /// <summary>A network below 1 GHz against one above; null when the home has no such two.</summary>
    public BandComparison? Bands { get; init; }

    /// <summary>The names of its pictures.</summary>
    public PictureNames Names { get; } = new(Home);
}
