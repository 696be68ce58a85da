using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Studies;

namespace MeshSim.Cli.Json;

/// <summary>The routes of one network as JSON.</summary>
internal sealed record RoutesJson(
    NetworkCoverage Coverage,
    int? FittedToReadings,
    int Unreachable,
    ImmutableArray<ReachJson> Devices)
    : WaysHeadJson(Coverage)
{
    /// <summary>The record of a coverage.</summary>
    public static RoutesJson Of(NetworkCoverage coverage) => new(
        coverage,
        coverage.Network.Fit?.Readings,
        coverage.Devices.Count(reach => !reach.IsReached),
        [.. coverage.Devices.Select(reach => ReachJson.Of(coverage, reach))]);
}

/// <summary>How one device reaches the coordinator. What belongs to a route is null without one.</summary>
internal sealed record ReachJson(
    string Device,
    string Storey,
    string? Room,
    bool IsReached,
    ImmutableArray<string>? Route,
    int? Hops,
    double? WeakestMarginDb,
    UncertaintyJson? WeakestUncertainty,
    double? Holds,
    double? Delivery,
    double? Etx,
    double? CommandDelivery,
    double? CommandExpectedMilliseconds,
    double? CommandP95Milliseconds,
    int DisjointRoutes,
    SecondRouteJson? SecondRoute,
    ImmutableArray<string> Needs,
    ImmutableArray<ParentJson> Parents,
    string? Nearest,
    double? ShortfallDb)
{
    /// <summary>The record of a device's reach.</summary>
    public static ReachJson Of(NetworkCoverage coverage, DeviceReach reach)
    {
        Device device = coverage.Home.Devices.First(d => d.Id == reach.Device);
        Route? route = reach.Route;
        RouteCertainty? sure = route is null ? null : RouteCertainty.Of(coverage.Links, route);
        ImmutableArray<string>? path = route is null ? null : JsonIds.Of(route.Path);
        return new(
            reach.Device.Value,
            device.Storey.Value,
            device.Room?.Value,
            reach.IsReached,
            path,
            route?.Hops,
            route?.WeakestMargin.Value,
            sure is { } weakest ? UncertaintyJson.Of(weakest.Weakest.Uncertainty) : null,
            sure?.Holds,
            route?.Delivery,
            route?.Etx,
            reach.Command?.Delivery,
            reach.Command?.ExpectedMilliseconds,
            reach.Command?.P95Milliseconds,
            reach.DisjointRoutes,
            reach.SecondRoute is { } second ? SecondRouteJson.Of(second) : null,
            JsonIds.Of(reach.Needs),
            [.. reach.Parents.Select(parent => new ParentJson(parent.Parent.Value, parent.Margin.Value, parent.Etx, parent.Hops))],
            reach.NearestLink?.Other(reach.Device).Value,
            Shortfall.Of(coverage, reach)?.Value);
    }
}

/// <summary>The best route that shares no router with the first.</summary>
internal sealed record SecondRouteJson(ImmutableArray<string> Route, int Hops, double WeakestMarginDb, double Delivery, double Etx)
{
    /// <summary>The record of a route.</summary>
    public static SecondRouteJson Of(Route route) =>
        new(JsonIds.Of(route.Path), route.Hops, route.WeakestMargin.Value, route.Delivery, route.Etx);
}

/// <summary>A relay that a device could keep as its parent.</summary>
internal sealed record ParentJson(string Parent, double MarginDb, double Etx, int Hops);
