using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.OpenData.Tests.Accuracy.Sets;

/// <summary>How the level of a frame moves about the mean of its burst.</summary>
internal enum BurstFading
{
    /// <summary>Not at all.</summary>
    Steady,

    /// <summary>Normal in decibels with a deviation of 2 dB: people, and a channel that is left and entered again.</summary>
    Scattered,

    /// <summary>Rayleigh: the most that many waves can do.</summary>
    Rayleigh,
}

/// <summary>
/// The measurement of a curve of frames against level as it was done, computed: bursts of every mean level, as many per decibel,
/// of which the level is read from the frames that arrived alone, by a register that may end somewhere.
/// </summary>
internal static class BurstSampling
{
    private const double FirstDbm = -120, LastDbm = -70, StepDb = 0.05, ScatterDb = 2;

    // Equal parts of the distribution of a frame's level; finer ones move no printed digit.
    private const int Parts = 400;

    /// <summary>Level and mean share of frames that arrived, in bins of 1 dB, from the weakest level up.</summary>
    /// <param name="receiver">The receiver.</param>
    /// <param name="fading">How frames differ within a burst.</param>
    /// <param name="floorDbm">The weakest level that its register can show; null where it has no end.</param>
    public static (double LevelDbm, double Share)[] Curve(Receiver receiver, BurstFading fading, double? floorDbm)
    {
        double[] aboutDb = [.. Enumerable.Range(0, Parts).Select(part => AboutDb(fading, (part + 0.5) / Parts))];
        List<(double ReadDbm, double Share, double Weight)> bursts = [];
        for (double meanDbm = FirstDbm; meanDbm <= LastDbm; meanDbm += StepDb)
        {
            double arrived = 0, read = 0;
            foreach (double about in aboutDb)
            {
                double levelDbm = meanDbm + about, share = (1 - receiver.LossAt(new PowerLevel(levelDbm))) / Parts;
                arrived += share;
                read += share * Math.Max(levelDbm, floorDbm ?? double.NegativeInfinity);
            }

            // A burst of which nothing arrived has no level and is in no bin.
            double isSeen = 1 - Math.Pow(1 - Math.Min(1, arrived), FrameCurve.Frames);
            if (isSeen > 1e-9) bursts.Add((read / arrived, arrived, isSeen));
        }

        return
        [
            .. bursts.GroupBy(burst => Math.Round(burst.ReadDbm)).OrderBy(bin => bin.Key)
                .Select(bin => (bin.Key, bin.Sum(burst => burst.Weight * burst.Share) / bin.Sum(burst => burst.Weight))),
        ];
    }

    // Quantiles, so that no random number is needed.
    private static double AboutDb(BurstFading fading, double probability) => fading switch
    {
        BurstFading.Steady => 0,
        BurstFading.Scattered => ScatterDb * NormalDistribution.TailQuantile(1 - probability),
        BurstFading.Rayleigh => 10 * Math.Log10(-Math.Log(1 - probability)),
        _ => throw new ArgumentOutOfRangeException(nameof(fading), fading, "no such fading"),
    };
}
