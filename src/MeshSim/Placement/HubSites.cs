using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;

namespace MeshSim.Placement;

/// <summary>Where a hub could go.</summary>
public static class HubSites
{
    /// <summary>
    /// The outlets that feed a hub at all times: a hub on a circuit that some state switches off would take every network with it.
    /// </summary>
    /// <param name="home">The home.</param>
    /// <param name="rooms">Only outlets in these rooms; all when empty.</param>
    public static ImmutableArray<Outlet> In(Home home, ImmutableArray<RoomName> rooms)
    {
        ArgumentNullException.ThrowIfNull(home);
        return [.. home.Outlets.Where(outlet => StaysOn(home, outlet) && (rooms.IsEmpty || (outlet.Room is { } room && rooms.Contains(room))))];
    }

    /// <summary>A coordinator as it would be beside an outlet: in the open, fed from there, otherwise as it is.</summary>
    public static Device MovedTo(Home home, Device coordinator, Outlet site)
    {
        ArgumentNullException.ThrowIfNull(home);
        ArgumentNullException.ThrowIfNull(coordinator);
        ArgumentNullException.ThrowIfNull(site);
        return coordinator with
        {
            Storey = site.Storey,
            Point = site.Point,
            HeightMetres = site.HeightMetres,
            Room = site.Room,
            Circuit = site.Circuit,
            SwitchedBy = null,
            Mounting = InTheOpen.In(home),
        };
    }

    private static bool StaysOn(Home home, Outlet outlet) =>
        outlet.Circuit is not { } circuit || !home.States.Any(state => state.CircuitsOff.Contains(circuit));
}
