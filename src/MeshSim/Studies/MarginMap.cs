using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;

namespace MeshSim.Studies;

/// <summary>Where one storey is dark for one network.</summary>
public sealed record MarginMap
{
    /// <summary>The network.</summary>
    public required NetworkName Network { get; init; }

    /// <summary>The storey.</summary>
    public required StoreyName Storey { get; init; }

    /// <summary>
    /// Margin (dB) of a battery device carried around the storey, to the best of the coordinator and the routers that are
    /// reached with a link to spare in the hop limit; mounted on the surface, sending with the profile's power. Negative
    /// infinity everywhere when nobody can be spoken to.
    /// </summary>
    public required Field Margin { get; init; }

    /// <summary>The margin that counts as covered.</summary>
    public required Decibels DesignMargin { get; init; }

    /// <summary>
    /// Share of each room's floor below the design margin, 0 to 1, in the storey's order; not-a-number for a room between the
    /// points of the grid.
    /// </summary>
    public required ImmutableArray<(RoomName Room, double DarkShare)> Rooms { get; init; }
}
