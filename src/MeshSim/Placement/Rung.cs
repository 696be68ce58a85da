using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>What some repeaters achieve everyday.</summary>
/// <param name="Reached">Devices with a reliable way.</param>
/// <param name="TwoWays">Devices that keep one when any one router or repeater is off.</param>
/// <param name="Patches">Points of the floor grid at which a battery device carried around has a reliable way.</param>
public readonly record struct Coverage(int Reached, int TwoWays, int Patches) : IComparable<Coverage>
{
    /// <summary>Devices first, then second ways, then floor.</summary>
    public int CompareTo(Coverage other) => (Reached, TwoWays, Patches).CompareTo((other.Reached, other.TwoWays, other.Patches));

    /// <summary>Whether one covers less than the other.</summary>
    public static bool operator <(Coverage left, Coverage right) => left.CompareTo(right) < 0;

    /// <summary>Whether one covers more than the other.</summary>
    public static bool operator >(Coverage left, Coverage right) => left.CompareTo(right) > 0;

    /// <summary>Whether one covers no more than the other.</summary>
    public static bool operator <=(Coverage left, Coverage right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one covers no less than the other.</summary>
    public static bool operator >=(Coverage left, Coverage right) => left.CompareTo(right) >= 0;
}

/// <summary>One rung of the ladder: the best that a number of repeaters can do.</summary>
/// <param name="Count">The number of repeaters that may be used.</param>
/// <param name="Outlets">Where they go when all are bought at once, by place among the outlets; fewer than allowed where more add nothing.</param>
/// <param name="Best">What they achieve.</param>
/// <param name="IsProven">Whether it is proven that no others of that number achieve more.</param>
/// <param name="Nested">Where they go when each is bought on top of those before, as the best next one.</param>
/// <param name="NestedBest">What these achieve.</param>
public sealed record Rung(
    int Count, ImmutableArray<int> Outlets, Coverage Best, bool IsProven, ImmutableArray<int> Nested, Coverage NestedBest);

/// <summary>A number of points of the floor grid at which the same nodes are heard.</summary>
/// <param name="Heard">Per router and outlet, by node, whether a battery device there has a reliable link with it.</param>
/// <param name="Points">How many points.</param>
public sealed record FloorPatch(ImmutableArray<bool> Heard, int Points);
