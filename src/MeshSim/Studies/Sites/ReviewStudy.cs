using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Placement.Robustness;
using MeshSim.Placement.Zones;

namespace MeshSim.Studies.Sites;

/// <summary>From a recommendation to how firm it stands: zones instead of points, second best, chance, the pessimistic case.</summary>
public static class ReviewStudy
{
    /// <summary>Reviews recommended repeaters.</summary>
    /// <param name="coverage">The network, with model and state.</param>
    /// <param name="placement">The recommendation for it.</param>
    /// <param name="chance">How it is tried against chance.</param>
    /// <param name="limit">The work to put into the second bests and the pessimistic case together.</param>
    public static PlacementReview Repeaters(NetworkCoverage coverage, RepeaterPlacement placement, RobustnessOptions chance, WorkLimit? limit = null)
    {
        if (placement.Repeaters.IsEmpty && placement.KeptOn.IsEmpty) return PlacementReview.Nothing;
        StateGraphs graphs = new(coverage.Home, coverage.Network, coverage.Model);
        ImmutableArray<Outlet> outlets = [.. placement.Repeaters.Select(repeater => repeater.Outlet)];
        ImmutableArray<DeviceId> kept = [.. placement.KeptOn.Select(device => device.Device)];
        if (SurveyedPlacement.Of(coverage.Home, coverage.Network, graphs, coverage.State, placement.Goals, outlets, kept) is not { } surveyed) return PlacementReview.Nothing;
        surveyed = surveyed with { CostBound = placement.CostBound };
        WorkLimit half = (limit ?? new()).SharedBy(2);
        return new()
        {
            Sites = SiteStandings.Of(surveyed, half),
            Zones = [.. surveyed.Chosen.Where(choice => choice < surveyed.Survey.Outlets.Length).Select(choice => ZoneMapping.OfRepeater(surveyed, choice))],
            Chances = chance.Draws > 0 ? GoalDraws.Estimate(surveyed, chance) : null,
            Pessimistic = PessimisticCase.Solve(surveyed, half),
        };
    }

    /// <summary>Reviews the best site of a hub; null when one of its coordinators has no power.</summary>
    /// <param name="home">The home.</param>
    /// <param name="hub">The recommendation for it.</param>
    /// <param name="options">Model and state.</param>
    /// <param name="chance">How it is tried against chance.</param>
    /// <param name="limit">The work to put into each proof.</param>
    public static HubReview? Hub(Home home, HubPlacement hub, StudyOptions options, RobustnessOptions chance, WorkLimit? limit = null)
    {
        Home moved = FollowedAdvice.WithHubAt(home, hub.Networks, hub.Best.Outlet);
        ImmutableArray<SurveyedPlacement?> surveyed = [.. hub.Best.Networks.Select(Survey)];
        if (surveyed.Any(placement => placement is null)) return null;
        ImmutableArray<SurveyedPlacement> all = [.. surveyed.OfType<SurveyedPlacement>()];
        double heightMetres = all[0].Survey.Devices[all[0].Survey.Problem.Coordinator].HeightMetres;
        return new()
        {
            Zone = ZoneMapping.OfHub(all, heightMetres),
            Networks = [.. all.Select(Reviewed)],
        };

        HubNetworkReview Reviewed(SurveyedPlacement placement) => new(
            placement.Network.Name, SiteStandings.SpareOfHub(placement), chance.Draws > 0 ? GoalDraws.Estimate(placement, chance) : null, PessimisticCase.Solve(placement, limit));

        SurveyedPlacement? Survey(HubNetwork answer)
        {
            Network network = moved.Networks.First(network => network.Name == answer.Network);
            return SurveyedPlacement.Of(moved, network, new(moved, network, options.Model), options.State, hub.Goals, answer.Repeaters, answer.KeptOn);
        }
    }
}
