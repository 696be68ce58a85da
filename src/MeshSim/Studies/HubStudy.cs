using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Placement;
using MeshSim.Studies.Sites;

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
        ImmutableArray<State> held = options.Goals.Held(home, options.State);
        ImmutableArray<Outlet> sites = HubSites.In(home, rooms, held);
        HubAdvice advice = new(sites, Surveyed(home, networks, sites, options, isPessimistic: false), home.Costs, limit ?? new());
        SiteRanking together = advice.Together();
        return new()
        {
            Networks = [.. networks.Select(network => network.Name)],
            Goals = options.Goals,
            StatesHeld = [.. held.Select(state => state.Name)],
            Sites = together.Best,
            SitesConsidered = advice.SiteCount,
            SitesLeftOut = together.LeftOut,
            SharesWork = together.SharesWork,
            Open = together.Open,
            OutletsSwitchedOff = HubSites.In(home, rooms, [.. home.States]).Length - sites.Length,
            Apart = advice.Apart(),
        };
    }

    /// <summary>Ranks the sites anew as if every loss were one standard deviation dearer; null where the sites are too many for that.</summary>
    /// <param name="home">The home.</param>
    /// <param name="hub">The recommendation as computed.</param>
    /// <param name="rooms">The rooms that were asked about.</param>
    /// <param name="options">Model, state, goals.</param>
    /// <param name="limit">The work to put into each proof.</param>
    public static PessimisticHub? InPessimisticCase(Home home, HubPlacement hub, ImmutableArray<RoomName> rooms, StudyOptions options, WorkLimit? limit = null)
    {
        ArgumentNullException.ThrowIfNull(hub);
        if (hub.SharesWork) return null;
        ImmutableArray<Outlet> sites = HubSites.In(home, rooms, options.Goals.Held(home, options.State));
        ImmutableArray<Network> networks = [.. home.Networks.Where(network => hub.Networks.Contains(network.Name))];
        SiteRanking dearer = new(sites, Surveyed(home, networks, sites, options, isPessimistic: true), home.Costs, listed: 1, limit ?? new());
        return new(dearer.Best[0], dearer.At(hub.Best.Outlet, limit ?? new()));
    }

    private static ImmutableArray<SiteNetwork> Surveyed(
        Home home, ImmutableArray<Network> networks, ImmutableArray<Outlet> sites, StudyOptions options, bool isPessimistic)
    {
        PlacementGoals goals = options.Goals;
        ImmutableArray<State> held = goals.Held(home, options.State);
        return [.. networks.Select(network => new SiteNetwork(home, network, new(home, network, options.Model), options.State, held, sites, goals, isPessimistic))];
    }
}
