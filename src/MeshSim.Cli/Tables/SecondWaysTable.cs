using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Mesh;
using MeshSim.Studies;

namespace MeshSim.Cli.Tables;

/// <summary>What is left to each reached device when its best way fails.</summary>
internal static class SecondWaysTable
{
    /// <summary>The table of a coverage; those without a second way come first.</summary>
    public static Table Of(NetworkCoverage coverage) => new(
        [new("Device"), new("Second way"), new("Hops", true), new("Margin dB", true), new("Parent"), new("dB", true), new("Else"), new("dB", true)],
        [.. coverage.Devices.Where(reach => reach.IsReached).OrderBy(reach => reach.SecondRoute is not null).Select(Row)])
    {
        Notes =
        [
            "Second way: shares no router with the best way. Parent: the one relay that a device without relaying of its own keeps, "
            + "and whom it would take else, with the margin of the link to each.",
        ],
    };

    private static ImmutableArray<string> Row(DeviceReach reach) =>
    [
        reach.Device.Value,
        reach.SecondRoute is { } second ? RoutesTable.Way(second) : NoSecond(reach),
        reach.SecondRoute is { } way ? Figures.Count(way.Hops) : "",
        reach.SecondRoute is { } route ? Figures.Decibels(route.WeakestMargin) : "",
        .. Parent(reach, 0),
        .. Parent(reach, 1),
    ];

    /// <summary>Why there is no second way.</summary>
    public static string NoSecond(DeviceReach reach) => reach.Needs.IsEmpty ? "NONE" : $"NONE: needs {string.Join(", ", reach.Needs)}";

    private static string[] Parent(DeviceReach reach, int choice) => choice < reach.Parents.Length
        ? [reach.Parents[choice].Parent.Value, Figures.Decibels(reach.Parents[choice].Margin)]
        : ["", ""];
}
