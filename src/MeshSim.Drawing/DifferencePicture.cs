using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Layers;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Margins;
using MeshSim.Drawing.Palettes;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;
using MeshSim.Studies;

namespace MeshSim.Drawing;

/// <summary>The picture of two networks compared on one storey: where which of them has more margin, and where neither has enough.</summary>
public static class DifferencePicture
{
    /// <summary>What is drawn, from the bottom to the top.</summary>
    internal static readonly ImmutableArray<ILayer> Layers =
    [
        new PaperLayer(),
        new HeatLayer(),
        new HatchLayer(),
        new ContourLayer(),
        new StairwellLayer(),
        new ObjectLayer(),
        new WallLayer(),
        new OpeningLayer(),
        new LabelLayer(),
        new TitleLayer(),
        new ColumnLayer(),
        new ScaleBarLayer(),
        new NorthLayer(),
    ];

    /// <summary>Draws the difference. The same input gives the same bytes on one platform.</summary>
    /// <param name="bands">The comparison.</param>
    /// <param name="map">One of its maps.</param>
    /// <param name="size">How large.</param>
    /// <returns>The picture as a PNG file.</returns>
    /// <exception cref="ArgumentException">The sheet would be too large.</exception>
    public static byte[] Png(BandComparison bands, BandMap map, PictureSize size) => Draw(bands, map, size, PictureFormat.Png);

    /// <summary>Draws the difference as any kind of file.</summary>
    /// <param name="bands">The comparison.</param>
    /// <param name="map">One of its maps.</param>
    /// <param name="size">How large.</param>
    /// <param name="format">Which kind.</param>
    /// <returns>The picture as a file.</returns>
    /// <exception cref="ArgumentException">The sheet would be too large.</exception>
    public static byte[] Draw(BandComparison bands, BandMap map, PictureSize size, PictureFormat format)
    {
        ArgumentNullException.ThrowIfNull(bands);
        ArgumentNullException.ThrowIfNull(map);
        using var ink = new Ink();
        return SheetPainter.Of(ContentsOf(bands, map, size, ink), Layers, ink).File(format);
    }

    /// <summary>Decides what the picture shows.</summary>
    internal static MapContents ContentsOf(BandComparison bands, BandMap map, PictureSize size, Ink ink)
    {
        Storey storey = bands.First.Home.FloorPlan.Storey(map.Storey);
        var scale = new DifferenceScale();
        Column column = DifferenceColumn.Of(bands, scale, ink);
        SheetLayout layout = SheetLayout.Of(PlanBounds.Of(bands.First.Home, storey), size, column.HeightPixels);
        Field difference = Difference(bands, map, (float)DifferenceScale.NeitherDb);
        var contents = new MapContents
        {
            Coverage = bands.First,
            Map = new MarginMap { Network = bands.First.Network.Name, Storey = map.Storey, Margin = difference, DesignMargin = Decibels.Zero, Rooms = [] },
            Storey = storey,
            Layout = layout,
            Scale = scale,
            Words = SheetWords.Of(bands, map, storey),
            RoomNotes = bands.Rooms.Where(room => room.Storey == map.Storey).ToImmutableDictionary(room => room.Room, NoteOf),
            Raster = new(difference, storey, scale, layout),
            Contours = [.. ContourTracer.Trace(Difference(bands, map, float.NaN), scale.HeavyDb)],
            Routes = new([], []),
            Marks = new([], []),
            Column = column,
            Stairwells = [.. MapContents.StairwellsOf(bands.First.Home.FloorPlan, storey)],
        };
        return contents with { Labels = Drawing.Labels.MapLabels.Of(contents, ink) };
    }

    /// <summary>The difference at every point, or a value of its own where neither network covers.</summary>
    private static Field Difference(BandComparison bands, BandMap map, float neither) => new(
        map.First.Grid,
        [.. map.First.Values.Zip(map.Second.Values, (first, second) =>
            first >= bands.First.DesignMargin.Value || second >= bands.Second.DesignMargin.Value ? Bounded(first - second) : neither)]);

    /// <summary>Where one of the two has nobody to speak to, the other is better without bound.</summary>
    private static float Bounded(float differenceDb) => Math.Clamp(differenceDb, -400, 400);

    private static string NoteOf(BandRoom room)
    {
        double differenceDb = room.First.Median.Value - room.Second.Median.Value;
        return double.IsFinite(differenceDb) ? FormattableString.Invariant($"{Math.Round(differenceDb):+0;-0;0} dB") : "one alone";
    }
}
