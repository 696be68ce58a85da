using System.Collections.Immutable;
using MeshSim.Dropouts;
using MeshSim.Propagation;
using MeshSim.Studies;

namespace MeshSim.Cli.Json;

/// <summary>Why a device drops out, as JSON.</summary>
internal sealed record DeviceExplanationJson(
    NetworkCoverage Coverage,
    string Device,
    string Storey,
    string? Room,
    bool IsOn,
    DeviceStandingJson Now,
    BudgetJson? Budget,
    ImmutableArray<ElsewhereJson> Elsewhere,
    int Tried,
    ImmutableArray<DeviceFixJson> Fixes)
    : NetworkHeadJson(Coverage)
{
    /// <summary>The record of an answer.</summary>
    public static DeviceExplanationJson Of(DeviceExplanation answer) => new(
        answer.Coverage,
        answer.Device.Id.Value,
        answer.Device.Storey.Value,
        answer.Device.Room?.Value,
        answer.Now.IsOn,
        DeviceStandingJson.Of(answer.Now),
        answer.Budget is { } budget ? BudgetJson.Of(budget) : null,
        [.. answer.Elsewhere.Select(other => new ElsewhereJson(other.Network.Name.Value, other.Network.Carrier.Megahertz, DeviceStandingJson.Of(other.Standing)))],
        answer.Tried,
        [.. answer.Fixes.Select(fix => new DeviceFixJson(FixJson.Of(fix.Fix), fix.LeftWithOneWay, DeviceStandingJson.Of(fix.After)))]);
}

/// <summary>How a device stands. Without a route the margin and the delivery are those of the nearest link.</summary>
internal sealed record DeviceStandingJson(
    bool IsReached, ImmutableArray<string> Route, double MarginDb, double Delivery, int DisjointRoutes, ImmutableArray<OutageNameJson> DropsIn)
{
    /// <summary>The record of a standing.</summary>
    public static DeviceStandingJson Of(DeviceStanding standing) => new(
        standing.IsReached,
        standing.Reach?.Route is { } route ? JsonIds.Of(route.Path) : [],
        standing.Margin.Value,
        standing.Delivery,
        standing.Ways,
        [.. standing.Outages.Drops.Select(outage => new OutageNameJson(outage.Kind, outage.Name))]);
}

/// <summary>How a device would stand in another network.</summary>
internal sealed record ElsewhereJson(string Network, double CarrierMegahertz, DeviceStandingJson Standing);

/// <summary>A fix in words.</summary>
internal sealed record FixJson(string Kind, string Words, bool IsHabit, bool TouchesWiring)
{
    /// <summary>The record of a fix.</summary>
    public static FixJson Of(Fix fix) => new(System.Text.Json.JsonNamingPolicy.KebabCaseLower.ConvertName(fix.GetType().Name), fix.Words, fix.IsHabit, fix.TouchesWiring);
}

/// <summary>What a fix makes of a device.</summary>
internal sealed record DeviceFixJson(FixJson Fix, int LeavesWithOneWay, DeviceStandingJson After);

/// <summary>The budget of a link in its worse direction.</summary>
internal sealed record BudgetJson(
    string Sender,
    string Receiver,
    double DistanceMetres,
    double TransmitPowerDbm,
    double AntennaGainDb,
    ImmutableArray<BudgetLossJson> Losses,
    double PathLossDb,
    double ReceivedDbm,
    double UndisturbedRequiredDbm,
    double DisturbanceDb,
    double RequiredDbm,
    RequirementCause Cause,
    double MarginDb,
    UncertaintyJson Uncertainty,
    double Holds,
    double DesignMarginDb,
    double MissingDb)
{
    /// <summary>The record of a budget.</summary>
    public static BudgetJson Of(Budget budget) => new(
        budget.Sender.Value,
        budget.Receiver.Value,
        budget.Link.PathLoss.DistanceMetres,
        budget.TransmitPower.Dbm,
        budget.AntennaGain.Value,
        [.. budget.Losses.Select(loss => new BudgetLossJson(loss.Item.Kind, loss.Item.Name, loss.Item.Construction?.Value, loss.Item.AngleDegrees, loss.Item.Loss.Value, loss.Share))],
        budget.Link.PathLoss.Total.Value,
        budget.Received.Dbm,
        budget.UndisturbedRequired.Dbm,
        budget.Disturbance.Value,
        budget.Required.Dbm,
        budget.Cause,
        budget.Margin.Value,
        UncertaintyJson.Of(budget.Link.Uncertainty),
        budget.Link.Holds,
        budget.DesignMargin.Value,
        budget.Missing.Value);
}

/// <summary>One loss with its share of all, 0 to 1.</summary>
internal sealed record BudgetLossJson(LossKind Kind, string Name, string? Construction, double? AngleDegrees, double LossDb, double Share);
