using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Propagation;
using MeshSim.Studies;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Json;

/// <summary>Where the hub should go, as JSON.</summary>
internal sealed record HubJson(
    string Home,
    ModelName Model,
    string? State,
    ImmutableArray<string> Networks,
    ImmutableArray<double> DesignMarginsDb,
    int Ways,
    bool HoldStates,
    ImmutableArray<string> StatesHeld,
    CostsJson Costs,
    bool ServesAll,
    bool IsProven,
    int SitesConsidered,
    int SitesLeftOut,
    OpenSitesJson? Open,
    int OutletsSwitchedOff,
    ImmutableArray<HubSiteJson> Sites,
    ImmutableArray<HubGroupJson> Apart,
    HubReviewJson? Review)
{
    /// <summary>The record of a placement.</summary>
    public static HubJson Of(Home home, StudyOptions options, HubPlacement hub, HubReview? review = null) => new(
        home.Name,
        options.Model,
        options.State?.Name,
        Names(hub.Networks),
        [.. hub.Networks.Select(name => home.ParametersOf(home.Networks.Single(network => network.Name == name)).DesignMargin.Value)],
        hub.Goals.Ways,
        hub.Goals.HoldStates,
        hub.StatesHeld,
        new(home.Costs.Repeater, home.Costs.HubMove, home.Costs.SwitchGivenUp),
        hub.ServesAll,
        hub.IsProven,
        hub.SitesConsidered,
        hub.SitesLeftOut,
        hub.Open is { } open ? new(open.Count, open.OutOfReach, open.Unserved, open.Cost) : null,
        hub.OutletsSwitchedOff,
        [.. hub.Sites.Select(HubSiteJson.Of)],
        [.. hub.Apart.Select(group => new HubGroupJson(Names(group.Networks), HubSiteJson.Of(group.Site)))],
        review is null ? null : HubReviewJson.Of(review));

    private static ImmutableArray<string> Names(ImmutableArray<NetworkName> names) => [.. names.Select(name => name.Value)];
}

/// <summary>Sites that may be better than the best one, and what any of them comes to at least.</summary>
internal sealed record OpenSitesJson(int Count, int OutOfReach, int Unserved, int Cost);

/// <summary>What things cost, in the home's units.</summary>
internal sealed record CostsJson(int Repeater, int HubMove, int SwitchGivenUp);

/// <summary>Sticks that stand together.</summary>
internal sealed record HubGroupJson(ImmutableArray<string> Networks, HubSiteJson Site);

/// <summary>One site; no outlet where the hub is now.</summary>
internal sealed record HubSiteJson(
    string? Outlet,
    string? Storey,
    string? Room,
    double? XMetres,
    double? YMetres,
    double? HeightMetres,
    bool IsAssumed,
    int Cost,
    int LowerBound,
    int Repeaters,
    int Unserved,
    int OutOfReach,
    double? WeakestMarginDb,
    ImmutableArray<string> DarkIn,
    ImmutableArray<HubNetworkJson> Networks)
{
    /// <summary>The record of a site.</summary>
    public static HubSiteJson Of(HubSite site) => new(
        site.Outlet?.Id.Value,
        site.Outlet?.Storey.Value,
        site.Outlet?.Room?.Value,
        site.Outlet?.Point.XMetres,
        site.Outlet?.Point.YMetres,
        site.Outlet?.HeightMetres,
        site.Outlet?.IsAssumed == true,
        site.Cost,
        site.LowerBound,
        site.Repeaters,
        site.Unserved,
        site.OutOfReach,
        site.WeakestMargin?.Value,
        site.DarkIn,
        [.. site.Networks.Select(HubNetworkJson.Of)]);
}

/// <summary>What one network needs with the hub at a site.</summary>
internal sealed record HubNetworkJson(
    string Network,
    ImmutableArray<string> Repeaters,
    ImmutableArray<string> KeptOn,
    ImmutableArray<string> Unserved,
    ImmutableArray<string> OutOfReach,
    double? WeakestMarginDb,
    int Cost,
    int LowerBound,
    bool IsProven,
    ImmutableArray<string> DarkIn)
{
    /// <summary>The record of a network.</summary>
    public static HubNetworkJson Of(HubNetwork network) => new(
        network.Network.Value,
        JsonIds.Of(network.Repeaters),
        JsonIds.Of(network.KeptOn),
        JsonIds.Of(network.Unserved),
        JsonIds.Of(network.OutOfReach),
        network.WeakestMargin?.Value,
        network.Cost,
        network.LowerBound,
        network.Cost == network.LowerBound,
        network.DarkIn);
}
