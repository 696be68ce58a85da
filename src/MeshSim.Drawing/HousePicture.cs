using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Layers;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Drawing;

/// <summary>A sheet with several storeys as a file.</summary>
/// <param name="Storeys">What it shows, lowest first.</param>
/// <param name="File">The file.</param>
public sealed record HouseSheet(ImmutableArray<StoreyName> Storeys, byte[] File);

/// <summary>
/// The storeys of a house for one network side by side, at one scale: what <see cref="MarginPicture"/> shows of each, on as few
/// sheets of A4's proportions as stay legible. The signs are explained by <see cref="LegendPicture"/>.
/// </summary>
public static class HousePicture
{
    /// <summary>Pixels of a PNG file for each of the layout: sharp on paper.</summary>
    private const int PngScale = 2;

    /// <summary>What is drawn of each storey: a map without what lies beside it.</summary>
    private static readonly ImmutableArray<ILayer> OfStorey =
        [.. MarginPicture.Layers.Where(layer => layer is not (PaperLayer or TitleLayer or ColumnLayer or ScaleBarLayer or NorthLayer)), new StoreyNameLayer()];

    /// <summary>Draws the sheets.</summary>
    /// <param name="coverage">Who reaches whom in the network.</param>
    /// <param name="maps">Margins of the same network, a map for each storey, lowest first.</param>
    /// <param name="repeaters">The recommendation for the same network, or null when none was asked for.</param>
    /// <param name="format">Which kind of file.</param>
    /// <returns>A file for each sheet; none where there is no map.</returns>
    /// <exception cref="ArgumentException">The inputs are of different networks.</exception>
    public static ImmutableArray<HouseSheet> Draw(NetworkCoverage coverage, ImmutableArray<MarginMap> maps, RepeaterPlacement? repeaters, PictureFormat format)
    {
        using var ink = new Ink();
        Refuse(coverage, maps, repeaters);
        return
        [
            .. ContentsOf(coverage, maps, repeaters, ink)
                .Select(storeys => new HouseSheet([.. storeys.Select(storey => storey.Storey.Name)], Painter(coverage, storeys, ink).File(format, PngScale))),
        ];
    }

    /// <summary>Writes the sheets as SVG to stand inside a page.</summary>
    /// <param name="coverage">Who reaches whom in the network.</param>
    /// <param name="maps">Margins of the same network, a map for each storey, lowest first.</param>
    /// <param name="repeaters">The recommendation for the same network, or null when none was asked for.</param>
    /// <param name="id">Begins every id of the pictures; unique in the page.</param>
    /// <returns>An element for each sheet with the names of its storeys.</returns>
    /// <exception cref="ArgumentException">The inputs are of different networks.</exception>
    public static ImmutableArray<string> Inline(NetworkCoverage coverage, ImmutableArray<MarginMap> maps, RepeaterPlacement? repeaters, string id)
    {
        ArgumentException.ThrowIfNullOrEmpty(id);
        using var ink = new Ink();
        Refuse(coverage, maps, repeaters);
        return
        [
            .. ContentsOf(coverage, maps, repeaters, ink)
                .Select((storeys, index) => Painter(coverage, storeys, ink).Inline(FormattableString.Invariant($"{id}-{index + 1}"))),
        ];
    }

    /// <summary>Decides what each sheet shows.</summary>
    internal static IEnumerable<ImmutableArray<MapContents>> ContentsOf(NetworkCoverage coverage, ImmutableArray<MarginMap> maps, RepeaterPlacement? repeaters, Ink ink)
    {
        PlanBounds[] bounds = [.. maps.Select(map => PlanBounds.Of(coverage.Home, coverage.Home.FloorPlan.Storey(map.Storey)))];
        int first = 0;
        foreach (HouseLayout sheet in HouseLayout.Sheets(bounds))
        {
            yield return [.. sheet.Storeys.Select((layout, i) => MapContents.On(layout, new Column([]), coverage, maps[first + i], repeaters, ink))];
            first += sheet.Storeys.Length;
        }
    }

    private static void Refuse(NetworkCoverage coverage, ImmutableArray<MarginMap> maps, RepeaterPlacement? repeaters)
    {
        ArgumentNullException.ThrowIfNull(coverage);
        foreach (MarginMap map in maps) MarginPicture.Refuse(coverage, map, repeaters);
    }

    private static SheetPainter Painter(NetworkCoverage coverage, ImmutableArray<MapContents> storeys, Ink ink)
    {
        MapContents sheet = storeys[0] with { Words = SheetWords.Of(coverage, [.. storeys.Select(storey => storey.Map)], storeys[0].Storey) };
        return new(
            sheet.Layout.Sheet,
            sheet.Words.Title,
            [
                SheetPainter.Step(new PaperLayer(), sheet),
                .. from storey in storeys from layer in OfStorey select SheetPainter.Step(layer, storey),
                SheetPainter.Step(new HouseTitleLayer(), sheet),
                SheetPainter.Step(new StepsLayer(), sheet),
                SheetPainter.Step(new ScaleBarLayer(), sheet),
                SheetPainter.Step(new NorthLayer(), sheet),
            ],
            ink);
    }
}
