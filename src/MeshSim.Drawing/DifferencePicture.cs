using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Layers;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Palettes;
using MeshSim.FloorPlans;
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
        return new DifferenceContents
        {
            Coverage = bands.First,
            Storey = storey,
            First = new(map.First, bands.First.DesignMargin),
            Second = new(map.Second, bands.Second.DesignMargin),
            Words = SheetWords.Of(bands, map, storey),
            Column = DifferenceColumn.Of(bands, new DifferenceScale(), ink),
            Notes = bands.Rooms.Where(room => room.Storey == map.Storey)
                .ToImmutableDictionary(room => room.Room, room => DifferenceContents.Note(room.First.Median, room.Second.Median, "one alone")),
            HasZeroLine = true,
        }.Of(size, ink);
    }
}
