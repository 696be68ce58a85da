using System.Collections.Immutable;
using MeshSim.Mesh.Reliability;

namespace MeshSim.Placement.Robustness;

/// <summary>How often something held, by what was left to chance.</summary>
/// <param name="Shadowing">Shadowing drawn, losses as computed: every link needs its usable level.</param>
/// <param name="Losses">Losses drawn within what is known of them, no shadowing: every link needs the design margin, as planned.</param>
/// <param name="Both">Both drawn: every link needs its usable level.</param>
public readonly record struct ChanceBy(DrawnShare Shadowing, DrawnShare Losses, DrawnShare Both);

/// <summary>
/// How likely a recommendation keeps what it promises. Asked of every device at once: one device out of reach in one case, and the
/// draw is lost.
/// </summary>
public sealed record GoalChances
{
    /// <summary>What was asked.</summary>
    public required RobustnessOptions Options { get; init; }

    /// <summary>Every device is reached everyday.</summary>
    public required ChanceBy Everyday { get; init; }

    /// <summary>All that was asked for and could be had is had: everyday, in states, and after every single loss.</summary>
    public required ChanceBy Goal { get; init; }

    /// <summary>Each device everyday, both drawn, the least likely first and in the home's order among equals.</summary>
    public required ImmutableArray<ConnectionChance> Devices { get; init; }
}
