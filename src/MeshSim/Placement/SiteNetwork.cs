using System.Collections.Concurrent;
using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;

namespace MeshSim.Placement;

/// <summary>What one network needs with its coordinator at any of some sites; each answer is kept when first asked for. Several threads may ask.</summary>
internal sealed class SiteNetwork
{
    private const int InPlace = -1;

    private static readonly WorkLimit BoundOnly = new() { Rounds = 0, Relaxations = 20 };

    private readonly PlacementGoals goals;
    private readonly PlacementCosts costs;
    private readonly WorkLimit limit;
    private readonly Dictionary<int, PoweredPlaces> places;
    private readonly ConcurrentDictionary<int, HubNetwork> answers = [];
    private readonly ConcurrentDictionary<int, SiteScore> bounds = [];

    /// <summary>Surveys the network.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="graphs">Its links in any state.</param>
    /// <param name="everyday">The state planned for.</param>
    /// <param name="held">States that must hold.</param>
    /// <param name="sites">The sites.</param>
    /// <param name="goals">What else is asked.</param>
    /// <param name="limit">The work to put into each proof.</param>
    public SiteNetwork(
        Home home, Network network, StateGraphs graphs, State? everyday, ImmutableArray<State> held, ImmutableArray<Outlet> sites, PlacementGoals goals, WorkLimit limit)
    {
        (this.goals, this.limit, costs, Name) = (goals, limit, home.Costs, network.Name);
        places = PoweredPlaces.Of(home, network, graphs, everyday, held, sites).ToDictionary(place => place.Place ?? InPlace, place => place.Alike);
        Order = [.. home.DevicesOf(network).Select(device => device.Id)];
    }

    /// <summary>The network's name.</summary>
    public NetworkName Name { get; }

    private ImmutableArray<DeviceId> Order { get; }

    /// <summary>
    /// Fewer devices than this cannot be out of reach or unserved, and with so few, it costs no less. Besides every day only those states
    /// are looked at in which the coordinator has no power.
    /// </summary>
    /// <param name="site">A site; null where the coordinator is now.</param>
    public SiteScore BoundAt(int? site)
    {
        int key = site ?? InPlace;
        if (answers.TryGetValue(key, out HubNetwork? answer)) return new(answer.OutOfReach.Length, answer.Unserved.Length, answer.LowerBound);
        if (bounds.TryGetValue(key, out SiteScore known)) return known;
        ImmutableArray<DeviceId> dark = places[key].Dark;
        if (places[key].At(site) is not { } at) return bounds[key] = new(places[key].DarkEveryday.Length, dark.Length, 0);
        DemandSet demands = new(at.Situations[..1], ways: 1);
        int[] each = [.. at.CostsOf(costs)];
        int bound = RepeaterSolver.Bound(demands, each, BoundOnly);
        DeviceId[] outOfReach = [.. demands.Unservable.Select(device => at.Devices[device].Id)];
        return bounds[key] = new(outOfReach.Length, outOfReach.Union(dark).Count(), bound);
    }

    /// <summary>What is needed at a site, as far as the work goes.</summary>
    /// <param name="site">A site; null where the coordinator is now.</param>
    public HubNetwork Assess(int? site)
    {
        int key = site ?? InPlace;
        if (answers.TryGetValue(key, out HubNetwork? answer)) return answer;
        (ImmutableArray<DeviceId> dark, ImmutableArray<string> darkIn) = (places[key].Dark, places[key].DarkIn);
        if (places[key].At(site) is not { } at)
            return answers[key] = new(Name, [], [], InOrder(dark), places[key].DarkEveryday, null, 0, 0, 0) { DarkIn = darkIn };
        RepeaterSolution solution = RepeaterSolver.Solve(new DemandSet(at.Situations, goals.Ways), [.. at.CostsOf(costs)], limit);
        IEnumerable<DeviceId> unserved = solution.Unservable.Concat(solution.Unmet.Select(unmet => unmet.Device)).Select(device => at.Devices[device].Id);
        return answers[key] = new(
            Name,
            at.OutletsOf(solution.Outlets),
            [.. at.KeptOf(solution.Outlets).Select(device => device.Id)],
            InOrder(unserved.Concat(dark)),
            InOrder(solution.Unservable.Select(device => at.Devices[device].Id)),
            Weakest(at.Situations[0], solution),
            solution.Cost,
            solution.LowerBound,
            solution.Cuts)
        {
            DarkIn = darkIn,
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
