using System.Globalization;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.OpenData.Tests.Accuracy.Sets;

/// <summary>A floor of offices along a corridor, surveyed with phones.</summary>
internal static class OfficeFloor
{
    /// <summary>From how many of the samples at a point an access point counts as heard there.</summary>
    public const double HeardShare = 0.5;

    private const string Folder = "sodindoorloc-wifi-2400";

    // Neither height is published: phones are held at 1.0 to 1.34 m, access points hang from ceilings.
    private const double PhoneMetres = 1.2, AccessPointMetres = 2.5, NearestMetres = 1;

    /// <summary>The floor.</summary>
    public static MeasuredBuilding Read() => new()
    {
        Name = "Office floor",
        What = "Levels of seven access points at the surveyed points of one floor of 18 m by 58 m: offices on both sides of a corridor, and a hall. "
            + "A link counts as heard when at least half of the samples at the point have it. The publisher sets points apart for testing. "
            + "All points lie in the corridor and the hall, none in an office: whatever stands between the ends of a link, there is an open way round it.",
        Citation = "J. Bi et al., data set \"SODIndoorLoc\", Satellite Navigation 3, 25 (2022), doi 10.1186/s43020-022-00086-y, building CETC331, floor 1",
        Licence = "none stated; published as an open data set, citation asked for",
        Radio = "IEEE 802.11, 2412 to 2462 MHz; transmit power not stated; nine models of phone",
        Carrier = new(2437),
        Assumed = "what the walls are built of is not published: all are taken as plastered 100 mm block; access points hang at 2.5 m, "
            + "phones are held at 1.2 m; doors are drawn as gaps where the published drawing has gaps",
        Plan = MeasuredBuilding.WallsOnly(3, DataRows.Of(Folder, "walls_centreline_CETC331_F1_derived.csv").Select(WallOf)),
        Links = [.. DataRows.Of(Folder, "links_CETC331_F1_samefloor.csv").Where(row => row.Number("dist2d_m") >= NearestMetres).Select(LinkOf)],
    };

    private static Wall WallOf(DataRow row, int index) => new()
    {
        Name = string.Create(CultureInfo.InvariantCulture, $"wall {index + 1}"),
        Start = PlanPoint.FromMetres(row.Number("x1_m"), row.Number("y1_m")),
        End = PlanPoint.FromMetres(row.Number("x2_m"), row.Number("y2_m")),
        Construction = new("block-100-plastered"),
    };

    private static MeasuredLink LinkOf(DataRow row)
    {
        bool isHeard = row.Number("n_detected") >= HeardShare * row.Number("n_samples") && row.Has("rss_mean_dbm");
        return new(
            $"access point {row["ap"]}",
            MeasuredBuilding.At(row.Number("ap_x_m"), row.Number("ap_y_m"), AccessPointMetres),
            MeasuredBuilding.At(row.Number("pt_x_m"), row.Number("pt_y_m"), PhoneMetres),
            isHeard ? row.Number("rss_mean_dbm") : null,
            row["set"] == "test");
    }
}
