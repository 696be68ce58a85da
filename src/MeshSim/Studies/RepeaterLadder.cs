using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Placement;

namespace MeshSim.Studies;

/// <summary>What each repeater buys in one network, everyday.</summary>
public sealed record RepeaterLadder
{
    /// <summary>The network.</summary>
    public required NetworkName Network { get; init; }

    /// <summary>The outlets that the rungs count.</summary>
    public required ImmutableArray<Outlet> Outlets { get; init; }

    /// <summary>Number of devices that should be reached.</summary>
    public required int Devices { get; init; }

    /// <summary>Number of points in rooms at which a battery device could be carried.</summary>
    public required int Points { get; init; }

    /// <summary>From no repeater up; it ends where a further one adds nothing.</summary>
    public required ImmutableArray<Rung> Rungs { get; init; }

    /// <summary>Share of the floor that a coverage has, 0 to 1; 1 where there are no rooms.</summary>
    public double FloorShare(Coverage coverage) => Points == 0 ? 1 : coverage.Patches / (double)Points;
}
