using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Dropouts;
using MeshSim.Studies;

namespace MeshSim.Cli.Tables;

/// <summary>What would help, the best first, each found by changing the home and computing it again.</summary>
internal static class FixTables
{
    /// <summary>Said wherever something is proposed that needs work on fixed wiring.</summary>
    public const string Mains =
        "Mains: work on mains wiring can kill. Isolate the circuit, prove it dead, "
        + "follow the wiring rules of your country, and leave it to a licensed electrician where they ask for one.";

    /// <summary>So many fixes are enough to choose from at first.</summary>
    public const int Foremost = 3;

    /// <summary>The foremost fixes for a device.</summary>
    public static Table Best(DeviceExplanation answer) => Of(answer with { Fixes = [.. answer.Fixes.Take(Foremost)] }) with { Notes = [] };

    /// <summary>For a device.</summary>
    public static Table Of(DeviceExplanation answer) => new(
        [new("Fix"), new("Margin dB", true), new("Gain dB", true), new("Arrive %", true), new("Ways", true), new("Still drops in")],
        [
            .. answer.Fixes.Select(fix => ImmutableArray.Create(
                Words(fix.Fix, fix.LeftWithOneWay),
                Figures.Decibels(fix.After.Margin),
                Gain(fix.After.Margin.Value - answer.Now.Margin.Value),
                Figures.Percent(fix.After.Delivery),
                Figures.Count(fix.After.Ways),
                ExplainWords.Outages(fix.After.Outages))),
        ])
    {
        Notes =
        [
            "Each fix was applied to the home, alone, and everything computed again. First come those that leave it fewest outages, then changes "
            + "to this device before changes to the whole network, then the greater margin. Margin: of the weakest link on the way, or of the nearest link where "
            + "there is no way. Arrive: commands that get there, retries included. Fixes that cost another device its way are left out.",
            .. Remarks(answer.Fixes.Select(fix => fix.Fix)),
        ],
    };

    /// <summary>For a room.</summary>
    public static Table Of(RoomExplanation answer) => new(
        [new("Fix"), new("Dark %", true), new("Worst dB", true)],
        [.. answer.Fixes.Select(fix => ImmutableArray.Create(Words(fix.Fix, fix.LeftWithOneWay), Figures.Percent(fix.After.DarkShare), Figures.Decibels(fix.After.Worst)))])
    {
        Notes =
        [
            "Each fix was applied to the home, alone, and everything computed again. Worst: the margin at the worst place of the room. "
            + "Fixes that cost a device its way are left out.",
            .. Remarks(answer.Fixes.Select(fix => fix.Fix)),
        ],
    };

    private static string Words(Fix fix, int leftWithOneWay)
    {
        string[] remarks =
        [
            .. fix.IsHabit ? ["a habit, not a cure"] : Array.Empty<string>(),
            .. fix.TouchesWiring ? ["mains: see below"] : Array.Empty<string>(),
            .. leftWithOneWay > 0 ? [$"leaves {Figures.Counted(leftWithOneWay, "other")} with one way"] : Array.Empty<string>(),
        ];
        return remarks.Length == 0 ? fix.Words : $"{fix.Words} ({string.Join("; ", remarks)})";
    }

    private static string Gain(double gainDb) => double.IsFinite(gainDb) ? Figures.Tenths(gainDb) : "-";

    private static IEnumerable<string> Remarks(IEnumerable<Fix> fixes)
    {
        Fix[] all = [.. fixes];
        if (all.OfType<MoveCoordinator>().Any())
            yield return "A coordinator is moved alone here. Where several share one box, ask for each network, or put this one on a lead.";
        if (Array.Exists(all, fix => fix.TouchesWiring))
            yield return Mains;
    }
}
