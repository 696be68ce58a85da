using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Quantities;

namespace MeshSim.Studies;

/// <summary>Who reaches the coordinator of one network, through what, with what margin.</summary>
public sealed record NetworkCoverage
{
    /// <summary>The home.</summary>
    public required Home Home { get; init; }

    /// <summary>The network.</summary>
    public required Network Network { get; init; }

    /// <summary>The model that made the figures.</summary>
    public required ModelName Model { get; init; }

    /// <summary>The state of the house, or null.</summary>
    public State? State { get; init; }

    /// <summary>The margin that a link must have to count.</summary>
    public required Decibels DesignMargin { get; init; }

    /// <summary>Every pair of devices that are on, whatever their margin, in the order of the home's devices.</summary>
    public required ImmutableArray<Link> Links { get; init; }

    /// <summary>How each device that is on, the coordinator excepted, reaches the coordinator; in the home's order.</summary>
    public required ImmutableArray<DeviceReach> Devices { get; init; }
}
