using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Placement;

namespace MeshSim.Cli.Tables;

/// <summary>Where repeaters should go, and what each is for.</summary>
internal static class RepeatersTable
{
    /// <summary>The recommended repeaters.</summary>
    public static Table Of(RepeaterPlacement placement) => new(
        [
            new("Outlet"), new("Where"), new("At (x, y, height) m"), new("To the mesh dB", true), new("To its devices dB", true),
            new("Cut off without it"),
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
            string.Join("; ", Served(repeater)),
        ];
    }

    /// <summary>Who is cut off everyday, then in which state, then after which losses; losses that cut off the same devices together.</summary>
    private static IEnumerable<string> Served(PlacedRepeater repeater)
    {
        if (!repeater.Serves.IsEmpty) yield return string.Join(", ", repeater.Serves);
        foreach (ServedCase inState in repeater.ServesWhen.Where(when => when.Case.Lost is null))
            yield return $"{string.Join(", ", inState.Devices)}{RepeaterWords.When(inState.Case)}";
        foreach (var losses in repeater.ServesWhen.Where(when => when.Case.Lost is not null).GroupBy(when => string.Join(", ", when.Devices)))
            yield return $"{losses.Key}{RepeaterWords.When(new(null, string.Join(" or ", losses.Select(when => when.Case.Lost))))}";
    }
}
