using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Placement;

namespace MeshSim.Cli.Tables;

/// <summary>Where repeaters should go, and what each is for.</summary>
internal static class RepeatersTable
{
    /// <summary>The recommended repeaters.</summary>
    public static Table Of(RepeaterPlacement placement) => new(
        [new("Outlet"), new("Where"), new("At (x, y, height) m"), new("To the mesh dB", true), new("To its devices dB", true), new("Cut off without it")],
        [.. placement.Repeaters.Select(Row)])
    {
        Notes = ["Both figures are margins: how far the weaker direction lies above the weakest usable level."],
    };

    private static ImmutableArray<string> Row(PlacedRepeater repeater) =>
    [
        repeater.Outlet.Id.Value + (repeater.Outlet.IsAssumed ? " (assumed)" : ""),
        CoverageWords.Place(repeater.Outlet.Storey, repeater.Outlet.Room),
        string.Join(", ", new[] { repeater.Outlet.Point.XMetres, repeater.Outlet.Point.YMetres, repeater.Outlet.HeightMetres }.Select(Figures.Plain)),
        Figures.Decibels(repeater.UplinkMargin),
        Figures.Decibels(repeater.DownlinkMargin),
        string.Join(", ", repeater.Serves),
    ];
}
