using MeshSim.FloorPlans.Geometry;

namespace MeshSim.OpenData.Tests.Accuracy.Sets;

/// <summary>Two open halls full of IEEE 802.15.4 nodes, every pair measured.</summary>
internal static class OpenHalls
{
    // The default of the tool that measured; the files that can be seen agree.
    private const double DefaultDbm = 0;

    private const string Folder = "iotlab-802154-2400";

    /// <summary>The large hall.</summary>
    public static MeasuredBuilding ReadLarge() => Read("lille", "Open hall, 218 nodes", "one open hall of 16 m by 16 m");

    /// <summary>The small one.</summary>
    public static MeasuredBuilding ReadSmall() => Read("strasbourg", "Open hall, 49 nodes", "one open room of 16 m by 8 m");

    private static MeasuredBuilding Read(string site, string name, string place)
    {
        Dictionary<string, Position> nodes = DataRows.Of(Folder, $"{site}_nodes.csv").ToDictionary(
            row => row["node"], row => MeasuredBuilding.At(row.Number("x_m"), row.Number("y_m"), row.Number("z_m")), StringComparer.Ordinal);
        return new()
        {
            Name = name,
            What = $"Every node sends in turn on all 16 channels while all others listen, in {place}. Every pair heard each other. No walls.",
            Citation = $"\"Mercator\" link data sets on IoT-LAB, Inria, November and December 2016, site {site}",
            Licence = "none stated",
            Radio = "IEEE 802.15.4, 2405 to 2480 MHz; 0 dBm by the tool's default, not stated; the level register has steps of 3 dB and ends at −91 dBm",
            Carrier = new(2440),
            SentDbm = DefaultDbm,
            Plan = MeasuredBuilding.WallsOnly(3, []),
            Links =
            [
                .. DataRows.Of(Folder, $"{site}_links.csv")
                    .Select(row => new MeasuredLink(row["tx"], nodes[row["tx"]], nodes[row["rx"]], row.Number("rssi_mean_dbm"))),
            ],
        };
    }
}
