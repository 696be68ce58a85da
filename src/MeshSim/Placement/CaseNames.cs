using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>What the cases of a survey are called.</summary>
/// <param name="Survey">Who the nodes are.</param>
/// <param name="States">The state of each situation; null where it has no name.</param>
internal sealed record CaseNames(RepeaterSurvey Survey, ImmutableArray<string?> States)
{
    /// <summary>The case of a situation, with a node lost or none.</summary>
    public PlacementCase Of(int situation, int? lost) => new(States[situation], lost is { } node ? IdOf(node) : null, lost >= Survey.Devices.Length);

    private string IdOf(int node) => node < Survey.Devices.Length
        ? Survey.Devices[node].Id.Value
        : $"the repeater at {Survey.Outlets[node - Survey.Devices.Length].Id}";
}
