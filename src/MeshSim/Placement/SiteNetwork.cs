using System.Collections.Concurrent;
using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;

namespace MeshSim.Placement;

/// <summary>What one network needs with its coordinator at any of some sites; each answer is kept when first asked for. Several threads may ask.</summary>
internal sealed class SiteNetwork
{
    private const int InPlace = -1;

    private readonly PlacementGoals goals;
    private readonly PlacementCosts costs;
    private readonly Dictionary<int, PoweredPlaces> places;
    private readonly ConcurrentDictionary<(int Site, WorkLimit Limit), HubNetwork> answers = [];
    private readonly ConcurrentDictionary<int, SiteBound> bounds = [];

    /// <summary>Surveys the network.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="graphs">Its links in any state.</param>
    /// <param name="everyday">The state planned for.</param>
    /// <param name="held">States that must hold.</param>
    /// <param name="sites">The sites.</param>
    /// <param name="goals">What else is asked.</param>
    /// <param name="isPessimistic">Whether every loss is one standard deviation dearer than computed.</param>
    public SiteNetwork(
        Home home,
        Network network,
        StateGraphs graphs,
        State? everyday,
        ImmutableArray<State> held,
        ImmutableArray<Outlet> sites,
        PlacementGoals goals,
        bool isPessimistic = false)
    {
        (this.goals, costs, Name) = (goals, home.Costs, network.Name);
        places = PoweredPlaces.Of(home, network, graphs, everyday, held, sites, isPessimistic).ToDictionary(place => place.Place ?? InPlace, place => place.Alike);
        Order = [.. home.DevicesOf(network).Select(device => device.Id)];
    }

    /// <summary>The network's name.</summary>
    public NetworkName Name { get; }

    private ImmutableArray<DeviceId> Order { get; }

    /// <summary>Number of nodes: devices, and outlets that a repeater may take.</summary>
    public int NodeCount => places.Values.Max(place => place.NodeCount);

    /// <summary>So many devices are out of reach or unserved, and it costs no less.</summary>
    /// <param name="site">A site; null where the coordinator is now.</param>
    public SiteBound BoundAt(int? site) => bounds.GetOrAdd(site ?? InPlace, _ => FindBound(site));

    /// <summary>What is needed at a site, as far as the work goes.</summary>
    /// <param name="site">A site; null where the coordinator is now.</param>
    /// <param name="limit">The work to put into the proof.</param>
    public HubNetwork Assess(int? site, WorkLimit limit) => answers.GetOrAdd((site ?? InPlace, limit), _ => Solve(site, limit));

    private SiteBound FindBound(int? site)
    {
        PoweredPlaces alike = places[site ?? InPlace];
        if (alike.At(site) is not { } at) return new(new(alike.DarkEveryday.Length, alike.Dark.Length, 0), 0);
        DemandSet demands = new(at.Situations, goals.Ways);
        (double relaxed, int cost) = RepeaterSolver.Bound(demands, [.. at.CostsOf(costs)]);
        return new(new(demands.Unservable.Length, demands.Undone.Select(unmet => at.Devices[unmet.Device].Id).Union(alike.Dark).Count(), cost), relaxed);
    }

    private HubNetwork Solve(int? site, WorkLimit limit)
    {
        PoweredPlaces alike = places[site ?? InPlace];
        if (alike.At(site) is not { } at) return new(Name, [], [], InOrder(alike.Dark), alike.DarkEveryday, null, 0, 0, 0) { DarkIn = alike.DarkIn };
        RepeaterSolution solution = RepeaterSolver.Solve(new DemandSet(at.Situations, goals.Ways), [.. at.CostsOf(costs)], limit);
        return new(
            Name,
            at.OutletsOf(solution.Outlets),
            [.. at.KeptOf(solution.Outlets).Select(device => device.Id)],
            InOrder(solution.Undone.Select(unmet => at.Devices[unmet.Device].Id).Concat(alike.Dark)),
            InOrder(solution.Unservable.Select(device => at.Devices[device].Id)),
            Weakest(at.Situations[0], solution),
            solution.Cost,
            Math.Max(solution.LowerBound, BoundAt(site).Score.Cost),
            solution.Cuts)
        {
            DarkIn = alike.DarkIn,
            Searches = at.Problem.NodeCount + solution.Work.Searches,
        };
    }

    private ImmutableArray<DeviceId> InOrder(IEnumerable<DeviceId> ids)
    {
        HashSet<DeviceId> set = [.. ids];
        return [.. Order.Where(set.Contains)];
    }

    private static Quantities.Decibels? Weakest(Situation everyday, RepeaterSolution solution)
    {
        Demand demand = Demand.Of(everyday, 0, null);
        WidestRoutes routes = new(everyday.Problem, solution.Outlets, demand.Absent);
        double[] marginsDb = [.. demand.Devices.Except(solution.Unservable).Select(device => routes.MarginOf(device).Value)];
        return marginsDb.Length == 0 ? null : new(marginsDb.Min());
    }
}
