using System.Collections.Immutable;
using MeshSim.Placement;

namespace MeshSim.Cli.Wording;

/// <summary>What a placement was asked for, in words.</summary>
internal static class GoalWords
{
    /// <summary>
    /// Such as "Asked for: two ways to each device (one is left when any one router or repeater is off), and a way in bedtime".
    /// </summary>
    /// <param name="goals">What was asked.</param>
    /// <param name="held">The states that must hold and count.</param>
    public static string Asked(PlacementGoals goals, ImmutableArray<string> held)
    {
        string ways = goals.Ways > 1 ? "two ways to each device (one is left when any one router or repeater is off)" : "a way to each device";
        return $"Asked for: {ways}{States(goals, held)}";
    }

    private static string States(PlacementGoals goals, ImmutableArray<string> held)
    {
        if (!goals.HoldStates) return ", everyday alone";
        return held.IsEmpty ? "; no other state is marked that must hold" : $", and a way in {NameList.Spoken(held)}";
    }
}
