using MeshSim.Files;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.OpenData.Tests.Accuracy.Sets;

/// <summary>The share of frames that arrive against the level, measured and predicted.</summary>
internal static class FrameCurve
{
    /// <summary>Octets of a measured frame.</summary>
    public const int Octets = 100;

    /// <summary>The radio of the catalogue that belongs to the same class.</summary>
    public static readonly RadioProfile Radio = Catalogues.Radios.Single(radio => radio.Name == "ieee802154-2450");

    /// <summary>The sensitivity that makers state for that class of chip, from memory, dBm.</summary>
    public const double StatedByMakerDbm = -101;

    /// <summary>The lowest level that the chip's register can show, dBm.</summary>
    public const double RegisterFloorDbm = -91;

    private const string Measured = "Grenoble";

    /// <summary>Level and share of frames that arrived, from the weakest level up.</summary>
    public static (double LevelDbm, double Share)[] Read() =>
    [
        .. DataRows.Of("prr-vs-rssi-802154", "prr_vs_rssi.csv")
            .Where(row => row["radio_and_source"].Contains(Measured, StringComparison.Ordinal))
            .Select(row => (row.Number("rssi_dbm_bin"), row.Number("mean_prr")))
            .OrderBy(point => point.Item1),
    ];

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
        var receiver = new Receiver(Radio with { FrameOctets = Octets });
        (double low, double high) = (-130, -60);
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            if (1 - receiver.LossAt(new PowerLevel(middle)) < share) low = middle;
            else high = middle;
        }

        return high;
    }
}
