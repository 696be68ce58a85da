namespace MeshSim.OpenData.Tests.Accuracy.Sets;

/// <summary>Open rooms with BLE beacons: no walls, furniture as it stands.</summary>
internal static class OpenRooms
{
    // Where the publisher gives no heights: the beacons lie about as high as the phones.
    private const double FlatMetres = 1;

    // A path through the antenna's near surroundings says nothing about the room.
    private const double NearestMetres = 0.5;

    /// <summary>An open-plan office.</summary>
    public static MeasuredBuilding ReadOffice() => new()
    {
        Name = "Open-plan office",
        What = "One beacon at 126 places, received by twelve fixed sensors in an open office of 20.7 m by 17.6 m with desks and columns; the first of two "
            + "rounds. A sensor is what is left out. No walls.",
        Citation = "F. S. Danis et al., position-annotated BLE RSSI data set \"TETAM\", Pervasive and Mobile Computing 81 (2022)",
        Licence = "CC0 1.0",
        Radio = "BLE, 2.4 GHz; transmit power not stated",
        Carrier = new(2440),
        Plan = MeasuredBuilding.WallsOnly(3, []),
        Links =
        [
            .. DataRows.Of("tetam-ble-2400", "links.csv").Where(row => row["set"] == "set_1" && row.Has("rssi_mean_dbm")).Select(row => new MeasuredLink(
                row["sensor"],
                MeasuredBuilding.At(row.Number("sx_m"), row.Number("sy_m"), row.Number("sz_m")),
                MeasuredBuilding.At(row.Number("x_m"), row.Number("y_m"), row.Number("z_m")),
                row.Number("rssi_mean_dbm"))),
        ],
    };

    /// <summary>A laboratory.</summary>
    public static MeasuredBuilding ReadLaboratory() => ReadBeacons("geo", "1", "Laboratory", "an open laboratory, 22 beacons of −12 dBm", campaign: "1");

    /// <summary>A library between its shelves.</summary>
    public static MeasuredBuilding ReadLibrary() => ReadBeacons("lib", "1", "Library", "a library hall between book shelves, 24 beacons of −12 dBm; shelves are not drawn", campaign: "3");

    private static MeasuredBuilding ReadBeacons(string place, string phone, string name, string what, string campaign) => new()
    {
        Name = name,
        What = $"One phone at surveyed points of {what}. A beacon is what is left out. No walls.",
        Citation = "G. M. Mendoza-Silva et al., BLE levels in a library and a laboratory, 2018, doi 10.5281/zenodo.1618692",
        Licence = "CC BY 4.0",
        Radio = "BLE, 2.4 GHz; power of the beacons stated by code, gain of the phone unknown",
        Carrier = new(2440),
        Plan = MeasuredBuilding.WallsOnly(3, []),
        Links =
        [
            .. DataRows.Of("uji-ble-2400", $"links_{place}.csv")
                .Where(row => row["phone"] == phone && row["beacon_power_dbm"] == "-12" && row["campaign"] == campaign)
                .Where(row => row.Has("rss_mean_dbm") && row.Number("dist2d_m") >= NearestMetres)
                .Select(row => new MeasuredLink(
                    row["beacon"],
                    MeasuredBuilding.At(row.Number("bx_m"), row.Number("by_m"), FlatMetres),
                    MeasuredBuilding.At(row.Number("x_m"), row.Number("y_m"), FlatMetres),
                    row.Number("rss_mean_dbm"))),
        ],
    };
}
