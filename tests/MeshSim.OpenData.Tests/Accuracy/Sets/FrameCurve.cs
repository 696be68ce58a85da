using MeshSim.Files;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.OpenData.Tests.Accuracy.Sets;

/// <summary>The share of frames that arrive against the level, measured and predicted.</summary>
internal static class FrameCurve
{
    /// <summary>Octets of a measured frame.</summary>
    public const int Octets = 100;

    /// <summary>Frames of a burst.</summary>
    public const int Frames = 100;

    /// <summary>The radio of the catalogue that belongs to the same class.</summary>
    public static readonly RadioProfile Radio = Catalogues.Radios.Single(radio => radio.Name == "ieee802154-2450");

    /// <summary>The sensitivity that makers state for that class of chip, from memory, dBm.</summary>
    public const double StatedByMakerDbm = -101;

    /// <summary>The lowest level that the chip's register can show, dBm.</summary>
    public const double RegisterFloorDbm = -91;

    private const string Measured = "Grenoble";

    /// <summary>The receiver of <see cref="Radio"/> with frames as long as the measured ones.</summary>
    public static Receiver Receiver => new(Radio with { FrameOctets = Octets });

    /// <summary>Level and share of frames that arrived, from the weakest level up.</summary>
    public static (double LevelDbm, double Share)[] Read() => [.. Rows().Select(row => (row.Number("rssi_dbm_bin"), row.Number("mean_prr")))];

    /// <summary>How many bursts were read at levels from one to another, both whole dBm and included.</summary>
    public static double BurstsWithin(double lowDbm, double highDbm) =>
        Rows().Where(row => row.Number("rssi_dbm_bin") >= lowDbm && row.Number("rssi_dbm_bin") <= highDbm).Sum(row => row.Number("n_bursts"));

    /// <summary>Where a measured share is first reached from below, on straight lines between the points, dBm.</summary>
    public static double LevelOf(double share, IReadOnlyList<(double LevelDbm, double Share)> points)
    {
        int above = 0;
        while (points[above].Share < share) above++;
        ((double level, double low), (double next, double high)) = (points[above - 1], points[above]);
        return level + ((next - level) * (share - low) / (high - low));
    }

    /// <summary>Where the predicted share is reached, dBm, by halving.</summary>
    public static double PredictedLevelOf(double share)
    {
        Receiver receiver = Receiver;
        (double low, double high) = (-130, -60);
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            if (1 - receiver.LossAt(new PowerLevel(middle)) < share) low = middle;
            else high = middle;
        }

        return high;
    }

    private static IEnumerable<DataRow> Rows() => DataRows.Of("prr-vs-rssi-802154", "prr_vs_rssi.csv")
        .Where(row => row["radio_and_source"].Contains(Measured, StringComparison.Ordinal))
        .OrderBy(row => row.Number("rssi_dbm_bin"));
}
