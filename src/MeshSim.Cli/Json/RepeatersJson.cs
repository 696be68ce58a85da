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
    int Ways,
    ImmutableArray<string> StatesHeld,
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
        placement.Goals.Ways,
        placement.StatesHeld,
        placement.ServesAll,
        placement.IsProven,
        placement.LowerBound,
        placement.OutletsConsidered,
        [.. placement.Repeaters.Select(RepeaterJson.Of)],
        [.. placement.Unserved.Select(u => new UnservedJson(u.Device.Value, u.Case.State, u.Case.Lost, u.Shortfall?.Value, u.BestRelay))]);
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
    ImmutableArray<ServedCaseJson> ServesWhen,
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
            [.. repeater.ServesWhen.Select(when => new ServedCaseJson(when.Case.State, when.Case.Lost, [.. when.Devices.Select(id => id.Value)]))],
            repeater.UplinkMargin.Value,
            repeater.DownlinkMargin.Value);
    }
}

/// <summary>The devices that cannot do without a repeater in a state, or when a router is lost.</summary>
internal sealed record ServedCaseJson(string? State, string? Lost, ImmutableArray<string> Devices);

/// <summary>
/// A device that no outlet can serve, everyday where neither state nor lost router is named; no shortfall when hops are what is
/// missing.
/// </summary>
internal sealed record UnservedJson(string Device, string? State, string? Lost, double? ShortfallDb, string BestRelay);
