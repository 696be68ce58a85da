using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Layers;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Drawing;

/// <summary>The picture of one network on one storey: margins, plan, devices, routes, recommended repeaters.</summary>
public static class MarginPicture
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
        new RouteLayer(),
        new LabelLayer(),
        new DeviceLayer(),
        new RepeaterLayer(),
        new TitleLayer(),
        new ColumnLayer(),
        new ScaleBarLayer(),
        new NorthLayer(),
    ];

    /// <summary>Draws the map. The same input gives the same bytes on one platform; text may differ by shades across platforms.</summary>
    /// <param name="coverage">Who reaches whom in the network.</param>
    /// <param name="map">Margins of one storey for the same network.</param>
    /// <param name="repeaters">The recommendation for the same network, or null when none was asked for.</param>
    /// <param name="size">How large.</param>
    /// <returns>The picture as a PNG file.</returns>
    /// <exception cref="ArgumentException">The inputs are of different networks, or the sheet would be too large.</exception>
    public static byte[] Png(NetworkCoverage coverage, MarginMap map, RepeaterPlacement? repeaters, PictureSize size) =>
        Draw(coverage, map, repeaters, size, PictureFormat.Png);

    /// <summary>Draws the map as any kind of file.</summary>
    /// <param name="coverage">Who reaches whom in the network.</param>
    /// <param name="map">Margins of one storey for the same network.</param>
    /// <param name="repeaters">The recommendation for the same network, or null when none was asked for.</param>
    /// <param name="size">How large.</param>
    /// <param name="format">Which kind.</param>
    /// <returns>The picture as a file.</returns>
    /// <exception cref="ArgumentException">The inputs are of different networks, or the sheet would be too large.</exception>
    public static byte[] Draw(NetworkCoverage coverage, MarginMap map, RepeaterPlacement? repeaters, PictureSize size, PictureFormat format)
    {
        ArgumentNullException.ThrowIfNull(coverage);
        ArgumentNullException.ThrowIfNull(map);
        Refuse(coverage, map, repeaters);

        using var ink = new Ink();
        MapContents contents = MapContents.Of(coverage, map, repeaters, size, ink);
        return SheetPainter.Of(contents, Layers, ink).File(format);
    }

    /// <summary>Holds that everything is of one network.</summary>
    internal static void Refuse(NetworkCoverage coverage, MarginMap map, RepeaterPlacement? repeaters)
    {
        if (map.Network != coverage.Network.Name) throw new ArgumentException($"the map is of network \"{map.Network}\", not \"{coverage.Network.Name}\"", nameof(map));
        if (repeaters is not null && repeaters.Network != coverage.Network.Name)
            throw new ArgumentException($"the repeaters are of network \"{repeaters.Network}\", not \"{coverage.Network.Name}\"", nameof(repeaters));
    }
}
