using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Placement.Concessions;
using MeshSim.Studies;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Json;

/// <summary>Where repeaters should go in one network, as JSON.</summary>
internal sealed record RepeatersJson(
    NetworkCoverage Coverage,
    int UnreachableNow,
    int Ways,
    bool HoldStates,
    ImmutableArray<string> StatesHeld,
    bool ServesAll,
    bool IsProven,
    int LowerBound,
    int OutletsConsidered,
    ImmutableArray<RepeaterJson> Repeaters,
    ImmutableArray<UnservedJson> Unserved,
    ImmutableArray<CoordinatorOutage> CoordinatorOff,
    int Cost,
    int CostBound,
    ImmutableArray<KeptJson> KeptOn,
    LadderJson? Ladder,
    InfeasibilityJson? Infeasible,
    ReviewJson? Review)
    : NetworkHeadJson(Coverage)
{
    /// <summary>The record of a placement.</summary>
    public static RepeatersJson Of(
        NetworkCoverage coverage, RepeaterPlacement placement, RepeaterLadder? ladder = null, Infeasibility? infeasible = null, PlacementReview? review = null) => new(
        coverage,
        coverage.Devices.Count(reach => !reach.IsReached),
        placement.Goals.Ways,
        placement.Goals.HoldStates,
        placement.StatesHeld,
        placement.ServesAll,
        placement.IsProven,
        placement.LowerBound,
        placement.OutletsConsidered,
        [.. placement.Repeaters.Select(RepeaterJson.Of)],
        [.. placement.Unserved.Select(UnservedJson.Of)],
        placement.CoordinatorOff,
        placement.Cost,
        placement.CostBound,
        [.. placement.KeptOn.Select(KeptJson.Of)],
        ladder is null ? null : LadderJson.Of(ladder),
        infeasible is null ? null : InfeasibilityJson.Of(infeasible),
        review is null ? null : ReviewJson.Of(review));
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
    UncertaintyJson UplinkUncertainty,
    double DownlinkMarginDb,
    UncertaintyJson DownlinkUncertainty)
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
            JsonIds.Of(repeater.Serves),
            [.. repeater.ServesWhen.Select(ServedCaseJson.Of)],
            repeater.UplinkMargin.Value,
            UncertaintyJson.Of(repeater.UplinkUncertainty),
            repeater.DownlinkMargin.Value,
            UncertaintyJson.Of(repeater.DownlinkUncertainty));
    }
}

/// <summary>The devices that cannot do without a repeater in a state, or when a router is lost.</summary>
internal sealed record ServedCaseJson(string? State, string? Lost, ImmutableArray<string> Devices)
{
    /// <summary>The record of a case.</summary>
    public static ServedCaseJson Of(ServedCase when) => new(when.Case.State, when.Case.Lost, JsonIds.Of(when.Devices));
}

/// <summary>A mains device that stays powered when a state would turn it off.</summary>
internal sealed record KeptJson(string Device, string? Switch, ImmutableArray<ServedCaseJson> ServesWhen, double UplinkMarginDb, double DownlinkMarginDb)
{
    /// <summary>The record of a device.</summary>
    public static KeptJson Of(KeptDevice kept) => new(
        kept.Device.Value, kept.Switch, [.. kept.ServesWhen.Select(ServedCaseJson.Of)], kept.UplinkMargin.Value, kept.DownlinkMargin.Value);
}

/// <summary>
/// A device that no outlet can serve, everyday where neither state nor lost router is named; no shortfall when hops are what is
/// missing.
/// </summary>
internal sealed record UnservedJson(string Device, string? State, string? Lost, double? ShortfallDb, string BestRelay)
{
    /// <summary>The record of a device.</summary>
    public static UnservedJson Of(UnservedDevice device) => new(device.Device.Value, device.Case.State, device.Case.Lost, device.Shortfall?.Value, device.BestRelay);
}
