using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>What repeaters are to achieve.</summary>
public sealed record PlacementGoals
{
    /// <summary>Accepted numbers of ways.</summary>
    public static readonly ValidRange WaysRange = new(1, 2, "(ways)");

    /// <summary>What a recommendation is worth its money with: two ways for each device, and every state that must hold.</summary>
    public static readonly PlacementGoals Default = new();

    /// <summary>One way for each device while everything stays as it is.</summary>
    public static readonly PlacementGoals OneWayEveryday = new() { Ways = 1, HoldStates = false };

    private readonly int ways = 2;

    /// <summary>
    /// 1: every device is reached. 2, the default: every device is reached, and still is when any one router or repeater is off, whichever it
    /// is.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">It is neither 1 nor 2.</exception>
    public int Ways
    {
        get => ways;
        init => ways = WaysRange.Contains(value) ? value : throw new ArgumentOutOfRangeException(nameof(Ways), value, "must be 1 or 2");
    }

    /// <summary>Whether every device that has power must also be reached in each state that is marked so; on by default.</summary>
    public bool HoldStates { get; init; } = true;

    /// <summary>The states of a home that count besides the one planned for, in the home's order.</summary>
    /// <param name="home">The home.</param>
    /// <param name="everyday">The state planned for; null when everything is on and every door closed.</param>
    public ImmutableArray<State> Held(Home home, State? everyday)
    {
        ArgumentNullException.ThrowIfNull(home);
        return [.. home.States.Where(state => HoldStates && state.MustHold && state.Name != everyday?.Name)];
    }
}
