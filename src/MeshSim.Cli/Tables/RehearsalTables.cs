using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Mesh.Outages;
using MeshSim.Mesh.Reliability;
using MeshSim.Studies;

namespace MeshSim.Cli.Tables;

/// <summary>What outages and chance do to a network.</summary>
internal static class RehearsalTables
{
    /// <summary>Devices connected at least so often are counted, not listed.</summary>
    private const double HardlyEver = 0.999;

    /// <summary>A line for each kind of outage, the worst first.</summary>
    public static Table Kinds(NetworkRehearsal rehearsal) => new(
        [new("Kind"), new("Rehearsed", true), new("Drop somebody", true), new("Worst"), new("which drops")],
        [
            .. OutageSummary.Of(rehearsal.Rehearsals).Select(summary => ImmutableArray.Create(
                OutageWords.Kind(summary.Kind),
                Figures.Count(summary.Rehearsed),
                Figures.Count(summary.Dropping),
                IsCostly(summary.Worst) ? summary.Worst.Outage.Name : "none costs anything",
                OutageWords.Dropped(rehearsal.Coverage, summary.Worst))),
        ])
    {
        Notes = rehearsal.Options.Pairs ? ["A pair of routers is counted when it drops a device that neither router drops alone."] : [],
    };

    /// <summary>Every outage that costs something, the worst first; of pairs only those that cost more than their routers one by one.</summary>
    public static Table Outages(NetworkRehearsal rehearsal) => new(
        [new("What is off"), new("Kind"), new("Drops"), new("Left with one way"), new("Hops +", true), new("95 % ms +", true)],
        [.. Costly(rehearsal).Select(r => Row(rehearsal.Coverage, r))])
    {
        Notes =
        [
            "Drops: devices that have power and lose their reliable way. Left with one way: before, a router could fail. "
            + "Hops, ms: by how many links the way of the others gets longer, and by how much the time in which 95 of 100 commands arrive, at most.",
        ],
    };

    /// <summary>Outages that cost something.</summary>
    public static ImmutableArray<Rehearsal> Costly(NetworkRehearsal rehearsal) => OutageSummary.WorstFirst(rehearsal.Rehearsals.Where(r =>
        r.Outage.Kind == OutageKind.Pair ? OutageSummary.Drops(r, rehearsal.Rehearsals) : IsCostly(r)));

    /// <summary>How likely the less certain devices are connected, the least likely first.</summary>
    public static Table Chances(NetworkRehearsal rehearsal)
    {
        ConnectionChance[] listed = [.. rehearsal.Chances.Where(chance => chance.Probability < HardlyEver).OrderBy(chance => chance.Connected)];
        int others = rehearsal.Chances.Length - listed.Length;
        RehearsalOptions options = rehearsal.Options;
        return new(
            [new("Device"), new("Connected %", true), new("95 % sure between")],
            [.. listed.Select(chance => ImmutableArray.Create(chance.Device.Value, Figures.Percent(chance.Probability), Between(chance)))])
        {
            Notes =
            [
                .. others == 0 ? ImmutableArray<string>.Empty : [$"{Figures.Counted(others, listed.Length == 0 ? "device" : "further device")} connected in at least 99.9 % of the draws."],
                FormattableString.Invariant(
                    $"Chance: {options.Draws} draws of the shadowing of all links, seed {options.Seed}, correlation {options.Correlation} of links that share an end. ")
                    + "A draw asks only that the links of some way work that day; a reliable way asks the design margin of each.",
            ],
        };
    }

    private static bool IsCostly(Rehearsal rehearsal) => rehearsal.Dropped.Length + rehearsal.LeftWithOneWay.Length > 0;

    private static string Between(ConnectionChance chance) => $"{Figures.Percent(chance.Interval.Low)} to {Figures.Percent(chance.Interval.High)}";

    private static ImmutableArray<string> Row(NetworkCoverage coverage, Rehearsal rehearsal) =>
    [
        rehearsal.Outage.Name + (rehearsal.Outage.MustHold ? " (must hold)" : ""),
        OutageWords.Kind(rehearsal.Outage.Kind),
        OutageWords.Dropped(coverage, rehearsal),
        NameList.Short(rehearsal.LeftWithOneWay),
        Figures.Count(rehearsal.MostHopsAdded),
        rehearsal.MostP95AddedMilliseconds.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture),
    ];
}
