using System.Globalization;
using MeshSim.Propagation.Recommendations;
using MeshSim.Quantities;
using MeshSim.Radio;
using MeshSim.Tests.Materials;

namespace MeshSim.Tests.Radio;

/// <summary>Links from transmit power to packet error rate, once through the printed wall losses and once through our own.</summary>
public sealed class LinkExampleTests
{
    /// <summary>The losses of single walls are printed to ten digits, so chains of them are good to about this.</summary>
    private const double ChainedDb = 1e-8;

    /// <summary>
    /// A decibel more moves an error rate near 1 % of frames by up to a factor of ten, so a share of what the decibels miss, times
    /// 2.3 and rounded up.
    /// </summary>
    private const double ChainedShare = 1e-7;

    public static readonly ReproducedTable PrintedWalls =
        new("Radio/link-examples.csv", 4, ["case", "walls_P2040-3_mean_TE_TM"], ComparePrintedWalls);

    public static readonly ReproducedTable ComputedWalls =
        new("Radio/link-examples.csv", 4, ["case", "walls_P2040-3_mean_TE_TM"], CompareComputedWalls);

    public static TheoryData<int> Places => PrintedWalls.Places;

    [Theory]
    [MemberData(nameof(Places))]
    public void Through_the_printed_wall_losses_links_come_out_as_printed(int place) => PrintedWalls.ShouldBeMetAt(place);

    [Theory]
    [MemberData(nameof(Places))]
    public void Through_walls_of_our_own_links_come_out_as_printed(int place) => ComputedWalls.ShouldBeMetAt(place);

    private static IEnumerable<Comparison> ComparePrintedWalls(PublishedRow row) => Compare(
        row,
        row.Number("free_space_dB"),
        row["wall_losses_dB"].Split(" + ").Sum(loss => double.Parse(loss, CultureInfo.InvariantCulture)),
        level: (column, ours) => row.Near(column, ours, ChainedDb, "dB"),
        rate: (column, ours) => row.Within(column, ours, ChainedShare));

    private static IEnumerable<Comparison> CompareComputedWalls(PublishedRow row)
    {
        var frequency = new Frequency(row.Number("f_MHz"));
        double freeSpaceDb = FreeSpace.LossDb(row.Number("d_m"), frequency.Megahertz);
        double wallsDb = row["walls_P2040-3_mean_TE_TM"].Split(" + ").Sum(wall => WallLossDb(wall, frequency));

        // What arrives is a difference of levels and losses, the largest of which is the noise floor.
        double scaleDb = Math.Abs(row.Number("noise_dBm (2 MHz for oqpsk; bit-rate bandwidth for fsk)"));
        IEnumerable<Comparison> chain = Compare(
            row, freeSpaceDb, wallsDb, level: (column, ours) => row.Printed(column, ours, scaleDb), rate: (column, ours) => row.Within(column, ours));
        return [.. chain, row.Printed("free_space_dB", freeSpaceDb)];
    }

    private static IEnumerable<Comparison> Compare(
        PublishedRow row, double freeSpaceDb, double wallsDb, Func<string, double, Comparison> level, Func<string, double, Comparison> rate)
    {
        RadioProfile radio = RadioSamples.OQpsk with { NoiseFigure = new(row.Number("NF_dB")), Sensitivity = RadioSamples.NoiseDecides };
        var receiver = new Receiver(radio);
        var eirp = new PowerLevel(row.Number("EIRP_dBm_rx_gain_0dBi"));
        LinkLevels levels = new LinkBudget(radio, Decibels.Zero).Between(eirp, eirp, new(freeSpaceDb + wallsDb));
        yield return level("P_rx_dBm", levels.Received.Dbm);
        yield return level("wall_total_dB", wallsDb);
        yield return level("SNR_or_Eb_N0_dB", (levels.Received - receiver.NoiseFloor).Value);
        yield return rate("BER", receiver.BitErrorRateAt(levels.Received));
        yield return rate("PER_50_bytes", 1 - levels.Delivery);
    }

    /// <summary>The loss of a wall written as "name@30deg".</summary>
    private static double WallLossDb(string wall, Frequency frequency)
    {
        string[] parts = wall.Split('@');
        double angleDegrees = double.Parse(parts[1].Replace("deg", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
        return SlabTables.MeanLossDb(MaterialCatalogue.Layers(SlabTables.LayersOfSlab[parts[0]]), frequency, angleDegrees);
    }
}
