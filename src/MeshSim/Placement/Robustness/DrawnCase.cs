using System.Collections.Immutable;

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
/// <param name="DesignMarginDb">The margin planned with, dB.</param>
/// <param name="IsEveryday">Whether it is everyday without a loss.</param>
/// <param name="Coordinator">Where routes end.</param>
/// <param name="HopLimit">Most links in a row.</param>
/// <param name="Relays">Per node present whether it passes frames on.</param>
/// <param name="Devices">The devices that must be reached: the first nodes present are the devices.</param>
internal sealed record DrawnCase(
    int Doors, double DesignMarginDb, bool IsEveryday, int Coordinator, int HopLimit, ImmutableArray<bool> Relays, ImmutableArray<int> Devices)
{
    /// <summary>A demand over the nodes present.</summary>
    public static DrawnCase Of(Demand demand, PlannedLinks links) => new(
        links.Doors.IndexOf(demand.Problem),
        demand.Problem.DesignMargin.Value,
        demand is { Situation: 0, Lost: null },
        demand.Problem.Coordinator,
        demand.Problem.HopLimit,
        [.. links.Nodes.Select(node => demand.Problem.CanRelay(node) && !demand.Absent.Contains(node))],
        demand.Devices);
}
