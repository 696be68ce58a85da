using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Layers;
using MeshSim.Drawing.Legends;
using MeshSim.FloorPlans;
using MeshSim.Studies.Changes;

namespace MeshSim.Drawing;

/// <summary>The picture of one network on one storey before and after a change: where margin was won and where it was lost.</summary>
public static class ChangePicture
{
    /// <summary>What is drawn, from the bottom to the top: the layers of a difference, and the devices over them.</summary>
    internal static readonly ImmutableArray<ILayer> Layers = [.. DifferencePicture.Layers, new DeviceLayer()];

    /// <summary>Draws the difference. The same input gives the same bytes on one platform.</summary>
    /// <param name="changes">The network before and after.</param>
    /// <param name="map">One of its maps.</param>
    /// <param name="size">How large.</param>
    /// <param name="format">Which kind of file.</param>
    /// <returns>The picture as a file.</returns>
    /// <exception cref="ArgumentException">The sheet would be too large.</exception>
    public static byte[] Draw(NetworkChanges changes, MarginChange map, PictureSize size, PictureFormat format)
    {
        ArgumentNullException.ThrowIfNull(changes);
        ArgumentNullException.ThrowIfNull(map);
        using var ink = new Ink();
        return SheetPainter.Of(ContentsOf(changes, map, size, ink), Layers, ink).File(format);
    }

    /// <summary>Decides what the picture shows: the building and the devices as they are after.</summary>
    internal static MapContents ContentsOf(NetworkChanges changes, MarginChange map, PictureSize size, Ink ink)
    {
        Storey storey = changes.After.Coverage.Home.FloorPlan.Storey(map.Storey);
        return new DifferenceContents
        {
            Coverage = changes.After.Coverage,
            Storey = storey,
            First = new(map.After, changes.After.Coverage.DesignMargin),
            Second = new(map.Before, changes.Before.Coverage.DesignMargin),
            Words = SheetWords.Of(changes, map, storey),
            Column = ChangeColumn.Of(changes, map.Storey, new(), ink),
            Notes = changes.Rooms.Where(room => room.Storey == map.Storey)
                .ToImmutableDictionary(room => room.Room, room => DifferenceContents.Note(room.After.Median, room.Before.Median, "once alone")),
            HasDevices = true,
        }.Of(size, ink);
    }
}
