using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Cli.Tables;

/// <summary>What each repeater buys.</summary>
internal static class LadderTable
{
    /// <summary>The ladder: bought at once, and a second line where buying one by one ends up elsewhere.</summary>
    public static Table Of(RepeaterLadder ladder)
    {
        bool parts = ladder.Rungs.Any(rung => !IsSame(rung));
        return new(
            [new("Repeaters", true), .. parts ? [new Column("Bought")] : Array.Empty<Column>(), new("Devices", true), new("Two ways", true), new("Floor %", true), new("Outlets")],
            [.. ladder.Rungs.SelectMany(rung => Rows(ladder, rung, parts))])
        {
            Notes = [Note(ladder, parts)],
        };
    }

    private static string Note(RepeaterLadder ladder, bool parts) =>
        $"Of {Figures.Counted(ladder.Devices, "device")} everyday: with a way; with one when any one router or repeater is off. Floor: where a battery device carried around has a way."
        + (ladder.Rungs.All(rung => rung.IsProven) ? " No other choice of as many outlets does better." : " Rungs with \"?\" are not proven to be the best.")
        + Buying(ladder, parts);

    private static string Buying(RepeaterLadder ladder, bool parts)
    {
        if (parts) return " Bought one by one, each is the best next one beside those before.";
        return ladder.Rungs.Length > 2 ? " Bought one by one, each as the best next one, they end up in the same outlets." : "";
    }

    private static bool IsSame(Rung rung) => rung.Outlets.SequenceEqual(rung.Nested);

    private static IEnumerable<ImmutableArray<string>> Rows(RepeaterLadder ladder, Rung rung, bool parts)
    {
        yield return Row(ladder, rung, parts ? IsSame(rung) ? "either way" : "at once" : null, rung.Outlets, rung.Best);
        if (!IsSame(rung)) yield return Row(ladder, rung, "one by one", rung.Nested, rung.NestedBest);
    }

    private static ImmutableArray<string> Row(RepeaterLadder ladder, Rung rung, string? bought, ImmutableArray<int> outlets, Coverage coverage) =>
    [
        Figures.Count(rung.Count) + (rung.IsProven ? "" : "?"),
        .. bought is null ? Array.Empty<string>() : [bought],
        Figures.Count(coverage.Reached),
        Figures.Count(coverage.TwoWays),
        Figures.Percent(ladder.FloorShare(coverage)),
        string.Join(", ", outlets.Select(outlet => ladder.Outlets[outlet].Id)),
    ];
}
