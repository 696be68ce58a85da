using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;

namespace MeshSim.Placement;

/// <summary>
/// Places of a coordinator at which the same of the states asked for leave it without power: what can be asked there is the same, so
/// they are surveyed together.
/// </summary>
internal sealed class PoweredPlaces
{
    private readonly SiteSurvey? survey;
    private readonly ImmutableArray<int?> places;

    private PoweredPlaces(
        Home home, Network network, StateGraphs graphs, State? everyday, ImmutableArray<State> held, ImmutableArray<Outlet> sites, Darkness darkness, bool isPessimistic)
    {
        places = darkness.Places;
        DarkIn = [.. darkness.States.OfType<State>().Select(state => state.Name)];
        bool isDarkEveryday = darkness.States.Contains(everyday);
        DarkEveryday = isDarkEveryday ? [.. graphs.In(everyday).Devices.Where(id => id != network.Coordinator)] : [];
        Dark = [.. darkness.States.SelectMany(state => graphs.In(state).Devices).Distinct().Where(id => id != network.Coordinator)];
        ImmutableArray<State> lit = [.. held.Where(state => !darkness.States.Contains(state))];
        survey = isDarkEveryday ? null : new(home, network, graphs, everyday, lit, [.. places.OfType<int>().Select(place => sites[place])], isPessimistic: isPessimistic);
    }

    /// <summary>The states that leave the coordinator without power here, everyday's first, then in the home's order.</summary>
    public ImmutableArray<string> DarkIn { get; }

    /// <summary>The devices that have power in one of these states: nobody serves them then.</summary>
    public ImmutableArray<DeviceId> Dark { get; }

    /// <summary>Those that have power in the state planned for, when that is one of these states.</summary>
    public ImmutableArray<DeviceId> DarkEveryday { get; }

    /// <summary>Number of nodes of the survey; 0 where there is none.</summary>
    public int NodeCount => survey?.NodeCount ?? 0;

    /// <summary>All places of a coordinator, sorted by the states that leave it without power.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="graphs">Its links in any state.</param>
    /// <param name="everyday">The state planned for; null when everything is on.</param>
    /// <param name="held">States that must hold.</param>
    /// <param name="sites">Where the coordinator could go besides where it is.</param>
    /// <param name="isPessimistic">Whether every loss is one standard deviation dearer than computed.</param>
    /// <returns>Per place the others like it; the place where it is has no number.</returns>
    public static IEnumerable<(int? Place, PoweredPlaces Alike)> Of(
        Home home, Network network, StateGraphs graphs, State? everyday, ImmutableArray<State> held, ImmutableArray<Outlet> sites, bool isPessimistic)
    {
        Device? coordinator = home.DevicesOf(network).FirstOrDefault(device => device.Id == network.Coordinator);
        State?[] asked = [everyday, .. held];
        return Enumerable.Range(0, sites.Length).Select(site => (int?)site).Prepend(null)
            .GroupBy(place => string.Concat(asked.Select(state => IsDark(state, place) ? 'd' : 'l')), StringComparer.Ordinal)
            .SelectMany(group =>
            {
                ImmutableArray<State?> dark = [.. asked.Where((_, index) => group.Key[index] == 'd')];
                PoweredPlaces alike = new(home, network, graphs, everyday, held, sites, new([.. group], dark), isPessimistic);
                return alike.places.Select(place => (place, alike));
            });

        bool IsDark(State? state, int? place) =>
            coordinator is null || state?.TurnsOff(place is { } site ? HubSites.MovedTo(home, coordinator, sites[site]) : coordinator) == true;
    }

    /// <summary>The survey with the coordinator at one of these places; null where it has no power everyday.</summary>
    public RepeaterSurvey? At(int? place) => place is null
        ? survey?.WithHubInPlace()
        : survey?.WithHubAt(places.OfType<int>().ToImmutableArray().IndexOf(place.Value));

    /// <summary>Where which states leave the coordinator without power.</summary>
    /// <param name="Places">The places.</param>
    /// <param name="States">The states; null is everyday when everything is on, which only a missing coordinator is off in.</param>
    private readonly record struct Darkness(ImmutableArray<int?> Places, ImmutableArray<State?> States);
}
