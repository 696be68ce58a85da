using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Propagation;
using MeshSim.Studies;

namespace MeshSim.Cli.Json;

/// <summary>Where repeaters should go in one network, as JSON.</summary>
internal sealed record RepeatersJson(
    string Home,
    ModelName Model,
    string? State,
    string Network,
    double DesignMarginDb,
    int UnreachableNow,
    bool ServesAll,
    bool IsProven,
    int LowerBound,
    int OutletsConsidered,
    ImmutableArray<RepeaterJson> Repeaters,
    ImmutableArray<UnservedJson> Unserved)
{
    /// <summary>The record of a placement.</summary>
    public static RepeatersJson Of(NetworkCoverage coverage, RepeaterPlacement placement) => new(
        coverage.Home.Name,
        coverage.Model,
        coverage.State?.Name,
        placement.Network.Value,
        coverage.DesignMargin.Value,
        coverage.Devices.Count(reach => !reach.IsReached),
        placement.ServesAll,
        placement.IsProven,
        placement.LowerBound,
        placement.OutletsConsidered,
        [.. placement.Repeaters.Select(RepeaterJson.Of)],
        [.. placement.Unserved.Select(u => new UnservedJson(u.Device.Value, u.Shortfall?.Value, u.BestRelay))]);
}

/// <summary>One recommended repeater.</summary>
internal sealed record RepeaterJson(
    string Outlet,
    string Storey,
    string? Room,
    double XMetres,
    double YMetres,
    double HeightMetres,
    bool IsAssumed,
    ImmutableArray<string> Serves,
    double UplinkMarginDb,
    double DownlinkMarginDb)
{
    /// <summary>The record of a repeater.</summary>
    public static RepeaterJson Of(PlacedRepeater repeater)
    {
        Outlet outlet = repeater.Outlet;
        return new(
            outlet.Id.Value,
            outlet.Storey.Value,
            outlet.Room?.Value,
            outlet.Point.XMetres,
            outlet.Point.YMetres,
            outlet.HeightMetres,
            outlet.IsAssumed,
            [.. repeater.Serves.Select(id => id.Value)],
            repeater.UplinkMargin.Value,
            repeater.DownlinkMargin.Value);
    }
}

/// <summary>A device that no outlet can serve; no shortfall when hops are what is missing.</summary>
internal sealed record UnservedJson(string Device, double? ShortfallDb, string BestRelay);
