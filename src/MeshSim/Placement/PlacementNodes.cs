using System.Collections.Immutable;
using MeshSim.Devices;

namespace MeshSim.Placement;

/// <summary>Who the nodes of a placement problem are, in their order, and where the coordinator might go.</summary>
/// <param name="Devices">The devices: the first nodes.</param>
/// <param name="Outlets">The outlets that a repeater may take: the nodes that follow.</param>
/// <param name="Kept">Mains devices that a held state turns off and that could stay powered: the last nodes, chosen like outlets.</param>
/// <param name="Sites">Where the coordinator could go.</param>
internal sealed record PlacementNodes(ImmutableArray<Device> Devices, ImmutableArray<Outlet> Outlets, ImmutableArray<Device> Kept, ImmutableArray<Outlet> Sites)
{
    /// <summary>Number of nodes.</summary>
    public int Count => Devices.Length + Outlets.Length + Kept.Length;

    /// <summary>The device at a node; null at an outlet or a site.</summary>
    public Device? DeviceAt(int node) =>
        node < Devices.Length ? Devices[node]
        : node >= Devices.Length + Outlets.Length && node < Count ? Kept[node - Devices.Length - Outlets.Length]
        : null;
}
