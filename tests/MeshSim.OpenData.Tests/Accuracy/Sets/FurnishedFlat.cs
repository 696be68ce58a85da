using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.OpenData.Tests.Accuracy.Sets;

/// <summary>A furnished flat, walked through by a robot that sends to six fixed receivers.</summary>
internal static class FurnishedFlat
{
    private const string Folder = "flat-ble-2400";

    /// <summary>The flat.</summary>
    public static MeasuredBuilding Read() => new()
    {
        Name = "Furnished flat",
        What = "A tag on a robot, 1.3 m above the floor, received by six fixed anchors in a furnished flat of 9.1 m by 7.1 m. Levels are means over "
            + "cells of 0.5 m, which take out fading. A link is one cell and one anchor; an anchor is what is left out.",
        Citation = "M. Kolakowski, data set \"ble-rss-fingerprints-calib2021\", Warsaw University of Technology, 2021, doi 10.5281/zenodo.5457591",
        Licence = "CC BY 4.0",
        Radio = "BLE advertising, 2402 to 2480 MHz; transmit power not stated",
        Carrier = new(2440),
        Assumed = "what the walls are built of is not published: all are taken as plastered half brick, which is about as thick (128 mm; the flat's "
            + "inner walls have 0.10 to 0.19 m); door openings stand open",
        Plan = MeasuredBuilding.WallsOnly(2.8, DataRows.Of(Folder, "walls_centreline_derived.csv").Select(WallOf)),
        Links = [.. DataRows.Of(Folder, "links_cells_0p5m.csv").Select(LinkOf)],
    };

    private static Wall WallOf(DataRow row) => new()
    {
        Name = row["wall_id"],
        Start = PlanPoint.FromMetres(row.Number("x1_m"), row.Number("y1_m")),
        End = PlanPoint.FromMetres(row.Number("x2_m"), row.Number("y2_m")),
        Construction = new("brick-half-plastered"),
    };

    private static MeasuredLink LinkOf(DataRow row) => new(
        $"anchor {row["anchor"]}",
        MeasuredBuilding.At(row.Number("ax_m"), row.Number("ay_m"), row.Number("az_m")),
        MeasuredBuilding.At(row.Number("cell_x_m"), row.Number("cell_y_m"), row.Number("cell_z_m")),
        row.Number("rssi_mean_dbm"));
}
