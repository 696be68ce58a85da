using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Cli.Tables;

/// <summary>What each repeater buys.</summary>
internal static class LadderTable
{
    /// <summary>The ladder: bought at once, and a second line where buying one by one ends up elsewhere.</summary>
    public static Table Of(RepeaterLadder ladder) => new(
        [new("Repeaters", true), new("Bought"), new("Devices", true), new("Two ways", true), new("Floor %", true), new("Outlets")],
        [.. ladder.Rungs.SelectMany(rung => Rows(ladder, rung))])
    {
        Notes =
        [
            $"Of {Figures.Counted(ladder.Devices, "device")} everyday: with a way; with one when any one router or repeater is off. Floor: where a battery device carried around has a way."
                + (ladder.Rungs.All(rung => rung.IsProven) ? " No other choice of as many outlets does better." : " Rungs with \"?\" are not proven to be the best."),
        ],
    };

    private static IEnumerable<ImmutableArray<string>> Rows(RepeaterLadder ladder, Rung rung)
    {
        bool isSame = rung.Outlets.SequenceEqual(rung.Nested);
        yield return Row(ladder, rung, isSame ? "" : "at once", rung.Outlets, rung.Best);
        if (!isSame) yield return Row(ladder, rung, "one by one", rung.Nested, rung.NestedBest);
    }

    private static ImmutableArray<string> Row(RepeaterLadder ladder, Rung rung, string bought, ImmutableArray<int> outlets, Coverage coverage) =>
    [
        Figures.Count(rung.Count) + (rung.IsProven ? "" : "?"),
        bought,
        Figures.Count(coverage.Reached),
        Figures.Count(coverage.TwoWays),
        Figures.Percent(ladder.FloorShare(coverage)),
        string.Join(", ", outlets.Select(outlet => ladder.Outlets[outlet].Id)),
    ];
}
