using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Placement;

namespace MeshSim.Cli.Tables;

/// <summary>Where repeaters should go, and how well they hear.</summary>
internal static class RepeatersTable
{
    /// <summary>The recommended repeaters.</summary>
    public static Table Of(RepeaterPlacement placement) => new(
        [
            new("Outlet"), new("Where"), new("At (x, y, height) m"), new("To the mesh dB", true), new("To its devices dB", true),
        ],
        [.. placement.Repeaters.Select(Row)])
    {
        Notes = ["Both figures are margins: how far the weaker direction lies above the weakest usable level, ± one standard deviation."],
    };

    private static ImmutableArray<string> Row(PlacedRepeater repeater)
    {
        Outlet outlet = repeater.Outlet;
        double[] placeMetres = [outlet.Point.XMetres, outlet.Point.YMetres, outlet.HeightMetres];
        return
        [
            outlet.Id.Value + (outlet.IsAssumed ? " (assumed)" : ""),
            CoverageWords.Place(outlet.Storey, outlet.Room),
            string.Join(", ", placeMetres.Select(Figures.Plain)),
            Figures.Uncertain(repeater.UplinkMargin, repeater.UplinkUncertainty),
            Figures.Uncertain(repeater.DownlinkMargin, repeater.DownlinkUncertainty),
        ];
    }
}
