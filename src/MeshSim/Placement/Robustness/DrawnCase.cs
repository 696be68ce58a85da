using System.Collections.Immutable;
using MeshSim.Mesh.Reliability;

namespace MeshSim.Placement.Robustness;

/// <summary>What is left to chance.</summary>
internal enum Drawn
{
    /// <summary>Shadowing.</summary>
    Shadowing,

    /// <summary>Losses.</summary>
    Losses,

    /// <summary>Both.</summary>
    Both,
}

/// <summary>What must be reached in one case.</summary>
/// <param name="Doors">The set of doors.</param>
/// <param name="IsEveryday">Whether it is everyday without a loss.</param>
/// <param name="Spreading">How frames spread over the nodes present.</param>
/// <param name="Devices">The devices that must be reached: the first nodes present are the devices.</param>
internal sealed record DrawnCase(int Doors, bool IsEveryday, Spreading Spreading, ImmutableArray<int> Devices)
{
    /// <summary>A demand over the nodes present.</summary>
    public static DrawnCase Of(Demand demand, PlannedLinks links) => new(
        links.Doors.IndexOf(demand.Problem),
        demand is { Situation: 0, Lost: null },
        new(
            demand.Problem.Coordinator,
            demand.Problem.HopLimit,
            [.. links.Nodes.Select(node => demand.Problem.CanRelay(node) && !demand.Absent.Contains(node))]),
        demand.Devices);
}
