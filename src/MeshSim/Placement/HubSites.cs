using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;

namespace MeshSim.Placement;

/// <summary>Where a hub could go.</summary>
public static class HubSites
{
    /// <summary>
    /// The outlets that feed a hub at all times, and those that only a state switches off whose losses are counted. In any other state
    /// nobody would ask what a hub on a dead circuit takes with it, so such an outlet is no site.
    /// </summary>
    /// <param name="home">The home.</param>
    /// <param name="rooms">Only outlets in these rooms; all when empty.</param>
    /// <param name="counted">The states that must hold, in which what a site loses counts against it.</param>
    public static ImmutableArray<Outlet> In(Home home, ImmutableArray<RoomName> rooms, ImmutableArray<State> counted)
    {
        ArgumentNullException.ThrowIfNull(home);
        HashSet<string> names = [.. counted.Select(state => state.Name)];
        HashSet<string> switched = [.. home.States.Where(state => !names.Contains(state.Name)).SelectMany(state => state.CircuitsOff)];
        return
        [
            .. home.Outlets.Where(outlet => (outlet.Circuit is not { } circuit || !switched.Contains(circuit))
                && (rooms.IsEmpty || (outlet.Room is { } room && rooms.Contains(room)))),
        ];
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
}
