using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Mesh;
using MeshSim.Placement;

namespace MeshSim.Studies;

/// <summary>From a home to where the coordinators of its networks should go, together or apart.</summary>
public static class HubStudy
{
    /// <summary>Ranks the sites.</summary>
    /// <param name="home">The home.</param>
    /// <param name="networks">The networks whose coordinators are in the hub box; at least one.</param>
    /// <param name="rooms">Rooms in whose outlets the hub may go; any outlet when empty.</param>
    /// <param name="options">Model, state, goals.</param>
    /// <param name="limit">The work to put into each proof.</param>
    /// <exception cref="ArgumentException">There is no network, or the state opens a door that the home does not have.</exception>
    public static HubPlacement Run(Home home, ImmutableArray<Network> networks, ImmutableArray<RoomName> rooms, StudyOptions options, WorkLimit? limit = null)
    {
        if (networks.IsDefaultOrEmpty) throw new ArgumentException("there must be one", nameof(networks));
        PlacementGoals goals = options.Goals;
        ImmutableArray<State> held = goals.Held(home, options.State);
        ImmutableArray<Outlet> sites = HubSites.In(home, rooms, held);
        HubAdvice advice = new(sites, [.. networks.Select(Survey)], home.Costs, limit ?? new());
        SiteRanking together = advice.Together();
        return new()
        {
            Networks = [.. networks.Select(network => network.Name)],
            Goals = goals,
            StatesHeld = [.. held.Select(state => state.Name)],
            Sites = together.Best,
            SitesConsidered = advice.SiteCount,
            SitesLeftOut = together.LeftOut,
            Open = together.Open,
            OutletsSwitchedOff = HubSites.In(home, rooms, [.. home.States]).Length - sites.Length,
            Apart = advice.Apart(),
        };

        SiteNetwork Survey(Network network) =>
            new(home, network, new StateGraphs(home, network, options.Model), options.State, held, sites, goals);
    }
}
