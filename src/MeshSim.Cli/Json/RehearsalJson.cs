using System.Collections.Immutable;
using MeshSim.Mesh.Outages;
using MeshSim.Mesh.Reliability;
using MeshSim.Studies;

namespace MeshSim.Cli.Json;

/// <summary>What outages and chance do to one network, as JSON.</summary>
internal sealed record RehearsalJson(
    NetworkCoverage Coverage,
    bool Holds,
    ImmutableArray<string> UnreachableBefore,
    ImmutableArray<OutageSummaryJson> Kinds,
    ImmutableArray<OutageJson> Rehearsals,
    ChancesJson? Chances)
    : WaysHeadJson(Coverage)
{
    /// <summary>The record of an answer; of pairs only those that drop more than their routers one by one.</summary>
    public static RehearsalJson Of(NetworkRehearsal rehearsal)
    {
        NetworkCoverage coverage = rehearsal.Coverage;
        return new(
            coverage,
            !rehearsal.Broken.Any(),
            JsonIds.Of(coverage.Devices.Where(reach => !reach.IsReached).Select(reach => reach.Device)),
            [.. OutageSummary.Of(rehearsal.Rehearsals).Select(OutageSummaryJson.Of)],
            [.. rehearsal.Rehearsals.Where(r => r.Outage.Kind != OutageKind.Pair || OutageSummary.Drops(r, rehearsal.Rehearsals)).Select(OutageJson.Of)],
            rehearsal.Chances.IsEmpty ? null : ChancesJson.Of(rehearsal));
    }
}

/// <summary>All outages of one kind, in short.</summary>
internal sealed record OutageSummaryJson(OutageKind Kind, int Rehearsed, int Dropping, string Worst, int WorstDrops)
{
    /// <summary>The record of a summary.</summary>
    public static OutageSummaryJson Of(OutageSummary summary) =>
        new(summary.Kind, summary.Rehearsed, summary.Dropping, summary.Worst.Outage.Name, summary.Worst.Dropped.Length);
}

/// <summary>What one outage does.</summary>
internal sealed record OutageJson(
    OutageKind Kind,
    string Name,
    bool MustHold,
    ImmutableArray<string> Off,
    ImmutableArray<string> Dropped,
    ImmutableArray<string> LeftWithOneWay,
    ImmutableArray<string> Gained,
    ImmutableArray<RouteChangeJson> Changed)
{
    /// <summary>The record of a rehearsal.</summary>
    public static OutageJson Of(Rehearsal rehearsal) => new(
        rehearsal.Outage.Kind,
        rehearsal.Outage.Name,
        rehearsal.Outage.MustHold,
        JsonIds.Of(rehearsal.Off),
        JsonIds.Of(rehearsal.Dropped),
        JsonIds.Of(rehearsal.LeftWithOneWay),
        JsonIds.Of(rehearsal.Gained),
        [.. rehearsal.Changed.Select(RouteChangeJson.Of)]);
}

/// <summary>How the way of a device that stays reached changes.</summary>
internal sealed record RouteChangeJson(
    string Device,
    int HopsBefore,
    int HopsAfter,
    double EtxBefore,
    double EtxAfter,
    double CommandP95MillisecondsBefore,
    double CommandP95MillisecondsAfter,
    ImmutableArray<string> Route)
{
    /// <summary>The record of a change.</summary>
    public static RouteChangeJson Of(RouteChange change) =>
        new(
        change.Device.Value,
        change.Before.Hops,
        change.After.Hops,
        change.Before.Etx,
        change.After.Etx,
        change.CommandBefore.P95Milliseconds,
        change.CommandAfter.P95Milliseconds,
        JsonIds.Of(change.After.Path));
}

/// <summary>How likely each device is connected.</summary>
internal sealed record ChancesJson(int Draws, ulong Seed, double Correlation, double ShadowingDb, ImmutableArray<ChanceJson> Devices)
{
    /// <summary>The record of the chances of an answer.</summary>
    public static ChancesJson Of(NetworkRehearsal rehearsal) => new(
        rehearsal.Options.Draws,
        rehearsal.Options.Seed,
        rehearsal.Options.Correlation,
        rehearsal.Coverage.Home.ParametersOf(rehearsal.Coverage.Network).Shadowing.Value,
        [.. rehearsal.Chances.Select(ChanceJson.Of)]);
}

/// <summary>How likely one device is connected, with the bounds of the 95 % interval.</summary>
internal sealed record ChanceJson(string Device, double Probability, double Low, double High)
{
    /// <summary>The record of a chance.</summary>
    public static ChanceJson Of(ConnectionChance chance) =>
        new(chance.Device.Value, chance.Probability, chance.Interval.Low, chance.Interval.High);
}
