using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Radio;
using MeshSim.Studies;

namespace MeshSim.Cli.Json;

/// <summary>The links of one network as JSON.</summary>
internal sealed record LinksJson(string Home, ModelName Model, string Network, int? FittedToReadings, ImmutableArray<LinkJson> Links, AirJson Air)
{
    /// <summary>The record of a coverage.</summary>
    /// <param name="coverage">Links and routes of the network.</param>
    /// <param name="pollSeconds">How often the polling that is costed asks each device, s.</param>
    public static LinksJson Of(NetworkCoverage coverage, double pollSeconds = AirWords.UsualPollSeconds) => new(
        coverage.Home.Name,
        coverage.Model,
        coverage.Network.Name.Value,
        coverage.Network.Fit?.Readings,
        [.. coverage.Links.Select(LinkJson.Of)],
        AirJson.Of(coverage, AirStudy.Run(coverage), pollSeconds));
}

/// <summary>One link. The losses sum to <see cref="PathLossDb"/>.</summary>
internal sealed record LinkJson(
    string From,
    string To,
    double DistanceMetres,
    double PathLossDb,
    double ReceivedDbm,
    double ReverseDbm,
    double MarginDb,
    UncertaintyJson Uncertainty,
    double Holds,
    double Delivery,
    double ReverseDelivery,
    ReceptionJson? AtFrom,
    ReceptionJson? AtTo,
    ImmutableArray<LossJson> Losses)
{
    /// <summary>The record of a link.</summary>
    public static LinkJson Of(Link link) => new(
        link.From.Value,
        link.To.Value,
        link.PathLoss.DistanceMetres,
        link.PathLoss.Total.Value,
        link.Received.Dbm,
        link.Reverse.Dbm,
        link.Margin.Value,
        UncertaintyJson.Of(link.Uncertainty),
        link.Holds,
        link.Delivery,
        link.ReverseDelivery,
        ReceptionJson.Of(link.AtFrom),
        ReceptionJson.Of(link.AtTo),
        [.. link.PathLoss.Items.Select(LossJson.Of)]);
}

/// <summary>How wrong a margin may be, standard deviations.</summary>
internal sealed record UncertaintyJson(double TotalDb, double ShadowingDb, double LossesDb)
{
    /// <summary>The record of an uncertainty.</summary>
    public static UncertaintyJson Of(MarginUncertainty uncertainty) =>
        new(uncertainty.Total.Value, uncertainty.Shadowing.Value, uncertainty.Losses.Value);
}

/// <summary>One item of a path loss.</summary>
internal sealed record LossJson(LossKind Kind, string Name, string? Construction, double? AngleDegrees, double LossDb, bool IsExtrapolated)
{
    /// <summary>The record of an item.</summary>
    public static LossJson Of(LossItem item) =>
        new(item.Kind, item.Name, item.Construction?.Value, item.AngleDegrees, item.Loss.Value, item.IsExtrapolated);
}

/// <summary>What one end of a link needs, and why.</summary>
internal sealed record ReceptionJson(
    double QuietDbm, double PlanningDbm, double BusyDbm, double NoiseRiseDb, ImmutableArray<InterfererJson> Interferers)
{
    /// <summary>The record of a reception; null where none was computed.</summary>
    public static ReceptionJson? Of(Reception? reception) => reception is null ? null : new(
        reception.QuietLevel.Dbm,
        reception.PlanningLevel.Dbm,
        reception.BusyLevel.Dbm,
        reception.NoiseRise.Value,
        [.. reception.Interferers.Select(interferer => new InterfererJson(interferer.Name, interferer.Level.Dbm, interferer.Busy))]);
}

/// <summary>One access point as a receiver takes it in.</summary>
internal sealed record InterfererJson(string AccessPoint, double LevelDbm, double Busy);
