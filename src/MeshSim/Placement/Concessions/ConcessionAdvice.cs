using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Placement.Concessions;

/// <summary>Tells why not everything that was asked of a network can be had, and tries what giving in on one point would change.</summary>
internal sealed class ConcessionAdvice
{
    private readonly Home home;
    private readonly Network network;
    private readonly State? everyday;
    private readonly ImmutableArray<State> possible;
    private readonly ImmutableArray<State> dark;
    private readonly StateGraphs graphs;
    private readonly RepeaterSurvey survey;
    private readonly ConcessionSearch search;
    private readonly RepeaterSolution asked;

    /// <summary>Surveys the network and solves what was asked.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="graphs">Its links in any state.</param>
    /// <param name="everyday">The state planned for, with power at the coordinator; null when everything is on.</param>
    /// <param name="held">The states that must hold.</param>
    /// <param name="goals">What was asked.</param>
    public ConcessionAdvice(Home home, Network network, StateGraphs graphs, State? everyday, ImmutableArray<State> held, PlacementGoals goals)
    {
        (this.home, this.network, this.graphs, this.everyday) = (home, network, graphs, everyday);
        possible = [.. held.Where(state => graphs.In(state).Coordinator >= 0)];
        dark = [.. held.Except(possible)];
        survey = RepeaterSurvey.Of(home, network, graphs, everyday, possible);
        search = SearchOf(survey, goals.Ways);
        asked = search.AsAsked();
    }

    /// <summary>Why not everything can be had, and what would help.</summary>
    public Infeasibility Tell()
    {
        ImmutableArray<UnmetDemand> undone = [.. asked.Undone];
        CaseNames names = new(survey, [null, .. possible.Select(state => state.Name)]);
        HashSet<int> unservable = [.. asked.Unservable];
        IEnumerable<UnmetDemand> named = undone.Where(entry => entry is { Situation: 0, Lost: null } || !unservable.Contains(entry.Device));
        return new()
        {
            Network = network.Name,
            Devices = Unserved(asked, dark),
            Obstacles = [.. ObstacleFinder.Find(survey.Situations, named).Select(found => Named(found, names))],
            Concessions = Infeasibility.BestFirst([.. OneWay(undone), .. TwoAtAnOutlet(undone), .. WithoutState(undone), .. LessMargin(undone), .. MoreHops(undone)]),
        };
    }

    private IEnumerable<Concession> OneWay(ImmutableArray<UnmetDemand> undone)
    {
        if (undone.Any(entry => entry.Lost is not null)) yield return Of(ConcessionKind.OneWay, search.OneWay(), dark);
    }

    /// <summary>
    /// Two repeaters where somebody hangs on one, and one more where somebody hangs on a router that is plugged in, such as a repeater that
    /// earlier advice put there.
    /// </summary>
    private IEnumerable<Concession> TwoAtAnOutlet(ImmutableArray<UnmetDemand> undone)
    {
        Device[] hungOn = [.. undone.Select(entry => entry.Lost).OfType<int>().Distinct().Order().Select(survey.DeviceAt).OfType<Device>()];
        ImmutableHashSet<OutletId> shared = [.. home.Outlets.Where(outlet => hungOn.Any(device => SiteSurvey.IsPluggedIn(device, outlet))).Select(outlet => outlet.Id)];
        if (shared.IsEmpty && search.HungOn(asked).IsEmpty) yield break;

        (RepeaterSurvey surveyed, ConcessionSearch searched, RepeaterSolution single) = (survey, search, asked);
        if (!shared.IsEmpty)
        {
            surveyed = RepeaterSurvey.Of(home, network, graphs, everyday, possible, shared);
            searched = SearchOf(surveyed, search.Ways);
            single = searched.AsAsked();
        }

        ImmutableArray<int> free = [.. Enumerable.Range(0, surveyed.Outlets.Length).Where(outlet => !shared.Contains(surveyed.Outlets[outlet].Id))];
        RepeaterSolution solution = searched.WithTwoAtAnOutlet(free, single);
        ImmutableArray<Outlet> chosen = surveyed.OutletsOf(solution.Outlets);
        Concession two = Of(ConcessionKind.TwoAtAnOutlet, solution, dark, surveyed) with
        {
            Doubled = [.. surveyed.OutletsOf(ConcessionSearch.Doubled(solution)).Select(outlet => outlet.Id)],
            Beside = [.. hungOn.Where(device => chosen.Any(outlet => SiteSurvey.IsPluggedIn(device, outlet))).Select(device => device.Id)],
        };
        if (!two.Doubled.IsEmpty || !two.Beside.IsEmpty) yield return two;
    }

    private IEnumerable<Concession> WithoutState(ImmutableArray<UnmetDemand> undone)
    {
        foreach (State state in dark)
            yield return Of(ConcessionKind.WithoutState, asked, dark.Remove(state)) with { State = state.Name };
        foreach (int situation in undone.Where(entry => entry.Situation > 0).Select(entry => entry.Situation).Distinct().Order())
            yield return Of(ConcessionKind.WithoutState, search.Without(situation), dark) with { State = possible[situation - 1].Name };
    }

    private IEnumerable<Concession> LessMargin(ImmutableArray<UnmetDemand> undone)
    {
        if (undone.IsEmpty) yield break;
        Decibels margin = survey.Problem.DesignMargin, least = LeastAdvisable();
        if (margin >= ConcessionSearch.Less) yield return With(ConcessionKind.LessMargin, margin - ConcessionSearch.Less, search.WithMargin(margin - ConcessionSearch.Less));
        if (search.WithLeastMargin(undone) is { } found) yield return With(ConcessionKind.LeastMargin, found.Margin, found.Solution);

        Concession With(ConcessionKind kind, Decibels less, RepeaterSolution solution) =>
            Of(kind, solution, dark) with { DesignMargin = less, Availability = AvailabilityAt(less), IsAdvisable = less >= least };
    }

    private IEnumerable<Concession> MoreHops(ImmutableArray<UnmetDemand> undone)
    {
        if (undone.IsEmpty || network.Radio.Topology == Topology.Star) yield break;
        int hops = network.HopLimit + 1;
        yield return Of(ConcessionKind.MoreHops, search.WithHopLimit(hops), dark) with { HopLimit = hops, IsBeyondRadio = hops > network.Radio.HopLimit };
    }

    private ConcessionSearch SearchOf(RepeaterSurvey surveyed, int ways) => new(surveyed.Situations, ways, surveyed.CostsOf(home.Costs));

    private Concession Of(ConcessionKind kind, RepeaterSolution solution, ImmutableArray<State> darkStates) => Of(kind, solution, darkStates, survey);

    private Concession Of(ConcessionKind kind, RepeaterSolution solution, ImmutableArray<State> darkStates, RepeaterSurvey surveyed) => new()
    {
        Kind = kind,
        Unserved = Unserved(solution, darkStates),
        Repeaters = surveyed.OutletsOf(solution.Outlets).Length,
        KeptOn = surveyed.KeptOf(solution.Outlets).Length,
        Cost = solution.Cost,
        IsProven = solution.IsProven,
    };

    private ImmutableArray<DeviceId> Unserved(RepeaterSolution solution, ImmutableArray<State> darkStates)
    {
        HashSet<DeviceId> ids =
        [
            .. solution.Undone.Select(entry => survey.Devices[entry.Device].Id),
            .. darkStates.SelectMany(state => graphs.In(state).Devices),
        ];
        return [.. home.DevicesOf(network).Select(device => device.Id).Where(ids.Contains)];
    }

    /// <summary>The design margin that the least availability would ask for, with the fading that is planned for.</summary>
    private Decibels LeastAdvisable() => (home.ParametersOf(network) with { Availability = Infeasibility.LeastAvailability }).DesignMargin;

    private double? AvailabilityAt(Decibels margin)
    {
        PlanningParameters parameters = home.ParametersOf(network);
        return parameters.Fading == Fading.None && parameters.Shadowing > Decibels.Zero
            ? 1 - NormalDistribution.Tail(margin.Value / parameters.Shadowing.Value)
            : null;
    }

    private Obstacle Named(FoundObstacle found, CaseNames names) => new(
        names.Of(found.Situation, found.Lost),
        [.. found.Devices.Select(device => survey.Devices[device].Id)],
        found.Link is { } link ? new ShortLink(survey.Describe(link.From), survey.Describe(link.To), Lack(found, link)) : null,
        found.LinksThatWouldDo,
        found.Hops);

    private Decibels Lack(FoundObstacle found, (int From, int To) link)
    {
        RepeaterProblem problem = survey.Situations[found.Situation].Problem;
        return problem.DesignMargin - problem.Margin(link.From, link.To);
    }
}
