using System.Collections.Immutable;
using MeshSim.Drawing;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Cli.Answers;

/// <summary>A picture with what it shows.</summary>
/// <param name="Name">The name of its file.</param>
/// <param name="File">The file.</param>
/// <param name="Maps">The maps in it.</param>
internal sealed record MapPicture(string Name, byte[] File, ImmutableArray<MarginMap> Maps)
{
    /// <summary>A picture of each map.</summary>
    /// <param name="maps">The maps of one network.</param>
    /// <param name="names">How files are called.</param>
    /// <param name="options">What repeaters are recommended for.</param>
    /// <param name="format">Which kind of file.</param>
    /// <param name="step">Told each step as it begins.</param>
    public static IEnumerable<MapPicture> OfEach(NetworkMaps maps, PictureNames names, StudyOptions options, PictureFormat format, Action<string> step)
    {
        RepeaterPlacement placement = Repeaters(maps, options, step);
        foreach (MarginMap map in maps.Maps)
        {
            step($"Picture of {map.Network}, {map.Storey}");
            yield return new(names.Picture(map, format), MarginPicture.Draw(maps.Coverage, map, placement, PictureSize.Default, format), [map]);
        }
    }

    /// <summary>As few sheets as show all maps legibly.</summary>
    /// <param name="maps">The maps of one network.</param>
    /// <param name="names">How files are called.</param>
    /// <param name="options">What repeaters are recommended for.</param>
    /// <param name="format">Which kind of file.</param>
    /// <param name="step">Told each step as it begins.</param>
    public static IEnumerable<MapPicture> OnSheets(NetworkMaps maps, PictureNames names, StudyOptions options, PictureFormat format, Action<string> step)
    {
        RepeaterPlacement placement = Repeaters(maps, options, step);
        step($"Sheet of {maps.Coverage.Network.Name}");
        return HousePicture.Draw(maps.Coverage, maps.Maps, placement, format).Select((sheet, index) => new MapPicture(
            names.Sheet(maps.Coverage.Network.Name, index, format), sheet.File, [.. maps.Maps.Where(map => sheet.Storeys.Contains(map.Storey))]));
    }

    private static RepeaterPlacement Repeaters(NetworkMaps maps, StudyOptions options, Action<string> step)
    {
        step($"Repeaters of {maps.Coverage.Network.Name}");
        return CoverageStudy.Repeaters(maps.Coverage, options);
    }
}
