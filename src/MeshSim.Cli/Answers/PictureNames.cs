using MeshSim.Cli.Outputs;
using MeshSim.Devices;
using MeshSim.Drawing;
using MeshSim.FloorPlans;
using MeshSim.Studies;

namespace MeshSim.Cli.Answers;

/// <summary>How the files of a home's maps are called: after the network and the storey, joined by a sign that neither slug has.</summary>
internal sealed class PictureNames
{
    private readonly Dictionary<NetworkName, string> networks;
    private readonly Dictionary<StoreyName, string> storeys;

    /// <summary>Names the files of a home. They do not depend on which of its networks and storeys are asked for.</summary>
    public PictureNames(Home home)
    {
        networks = Named(home.Networks.Select(network => network.Name), name => name.Value);
        storeys = Named(home.FloorPlan.Storeys.Select(storey => storey.Name), name => name.Value);
    }

    /// <summary>The picture of a map.</summary>
    public string Picture(MarginMap map, PictureFormat format = PictureFormat.Png) => $"margin_{networks[map.Network]}_{storeys[map.Storey]}{Extension(format)}";

    /// <summary>The picture of all storeys.</summary>
    /// <param name="network">The network.</param>
    /// <param name="sheet">Which sheet of it, from 0.</param>
    /// <param name="format">Which kind of file.</param>
    public string Sheet(NetworkName network, int sheet, PictureFormat format) =>
        FormattableString.Invariant($"margin_{networks[network]}_sheet-{sheet + 1}{Extension(format)}");

    /// <summary>The picture of a difference between two networks.</summary>
    public string Difference(BandComparison bands, BandMap map, PictureFormat format = PictureFormat.Png) =>
        $"difference_{networks[bands.First.Network.Name]}_{networks[bands.Second.Network.Name]}_{storeys[map.Storey]}{Extension(format)}";

    /// <summary>The picture of a difference between a home before and after.</summary>
    public string Change(NetworkName network, StoreyName storey, PictureFormat format) => $"change_{networks[network]}_{storeys[storey]}{Extension(format)}";

    /// <summary>The picture of recommended repeaters and their zones.</summary>
    public string Repeaters(NetworkName network, StoreyName storey, PictureFormat format) => $"repeaters_{networks[network]}_{storeys[storey]}{Extension(format)}";

    /// <summary>The picture of the ranked sites of a hub.</summary>
    public string Hub(StoreyName storey, PictureFormat format) => $"hub_{storeys[storey]}{Extension(format)}";

    /// <summary>The plan sheets of a storey.</summary>
    public string Sheets(StoreyName storey) => $"sheets_{storeys[storey]}.pdf";

    /// <summary>The values of a network's maps.</summary>
    public string Values(NetworkName network) => $"margin_{networks[network]}.csv";

    private static string Extension(PictureFormat format) => format switch { PictureFormat.Svg => ".svg", PictureFormat.Pdf => ".pdf", _ => ".png" };

    private static Dictionary<T, string> Named<T>(IEnumerable<T> names, Func<T, string> text)
        where T : notnull
    {
        T[] all = [.. names];
        return all.Zip(FileNames.DistinctSlugs(all.Select(text))).ToDictionary(pair => pair.First, pair => pair.Second);
    }
}
