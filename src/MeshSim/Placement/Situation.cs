using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>
/// What the house may be like while devices must be reached. All situations of one question have the same nodes in the same
/// order, the same coordinator and the same hop limit; links and power may differ.
/// </summary>
/// <param name="Problem">The nodes and the margins of their links, doors as they stand in the situation.</param>
/// <param name="WithoutPower">
/// The nodes that are off: devices that need not be reached and pass nothing on, outlets that feed no repeater. Never the
/// coordinator.
/// </param>
public sealed record Situation(RepeaterProblem Problem, ImmutableArray<int> WithoutPower)
{
    /// <summary>Everything has power.</summary>
    /// <param name="problem">The nodes and the margins of their links.</param>
    public static Situation WithAllPower(RepeaterProblem problem) => new(problem, []);

    /// <summary>The devices that must be reached: all that have power but the coordinator.</summary>
    public IEnumerable<int> Devices =>
        Enumerable.Range(0, Problem.DeviceCount).Where(device => device != Problem.Coordinator && !WithoutPower.Contains(device));

    /// <summary>The nodes that can pass frames on and may fail: routers and outlets with power, the coordinator excepted.</summary>
    public IEnumerable<int> Routers =>
        Enumerable.Range(0, Problem.NodeCount)
            .Where(node => Problem.CanRelay(node) && node != Problem.Coordinator && !WithoutPower.Contains(node));
}
