using System.Collections.Immutable;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Cli.Json;

/// <summary>What each repeater buys, as JSON.</summary>
internal sealed record LadderJson(int Devices, ImmutableArray<RungJson> Rungs)
{
    /// <summary>The record of a ladder.</summary>
    public static LadderJson Of(RepeaterLadder ladder) => new(ladder.Devices, [.. ladder.Rungs.Select(rung => RungJson.Of(ladder, rung))]);
}

/// <summary>One rung: bought at once, and each on top of those before.</summary>
internal sealed record RungJson(int Repeaters, bool IsProven, ChoiceJson AtOnce, ChoiceJson OneByOne)
{
    /// <summary>The record of a rung.</summary>
    public static RungJson Of(RepeaterLadder ladder, Rung rung) =>
        new(rung.Count, rung.IsProven, ChoiceJson.Of(ladder, rung.Outlets, rung.Best), ChoiceJson.Of(ladder, rung.Nested, rung.NestedBest));
}

/// <summary>Some outlets and what repeaters in them achieve.</summary>
internal sealed record ChoiceJson(ImmutableArray<string> Outlets, int Reached, int TwoWays, double FloorShare)
{
    /// <summary>The record of a choice.</summary>
    public static ChoiceJson Of(RepeaterLadder ladder, ImmutableArray<int> outlets, Coverage coverage) => new(
        [.. outlets.Select(outlet => ladder.Outlets[outlet].Id.Value)], coverage.Reached, coverage.TwoWays, ladder.FloorShare(coverage));
}
