using System.Globalization;
using MeshSim.OpenData.Tests.Accuracy.Sets;
using static MeshSim.OpenData.Tests.Accuracy.Page.PageNumbers;

namespace MeshSim.OpenData.Tests.Accuracy.Page;

/// <summary>Frames that arrive, against level.</summary>
internal static class FramesChapter
{
    // The register counts in steps of 3 dB, seen as peaks among bursts; the last step before frames vanish, and four above it.
    private const double PileLowDbm = -88, PileHighDbm = -86, AboveLowDbm = -85, AboveHighDbm = -74, StepDb = 3;

    /// <summary>The lines of the chapter.</summary>
    public static IEnumerable<string> Lines()
    {
        (double LevelDbm, double Share)[] points = FrameCurve.Read();
        double half = FrameCurve.LevelOf(0.5, points), predicted = FrameCurve.PredictedLevelOf(0.5);
        double width = FrameCurve.LevelOf(0.9, points) - FrameCurve.LevelOf(0.1, points), predictedWidth = FrameCurve.PredictedLevelOf(0.9) - FrameCurve.PredictedLevelOf(0.1);
        yield return "## Frames that arrive, against level";
        yield return "";
        yield return $"Bursts of {FrameCurve.Frames} frames of {FrameCurve.Octets} octets between IEEE 802.15.4 nodes indoors, each burst's mean level and share of "
            + "frames that arrived (1,530,960 bursts of the Grenoble site). "
            + "**Source.** K. Brun-Laguna et al., \"dense connectivity\" data sets, 2016 to 2018. **Licence.** None stated.";
        yield return "";
        yield return $"| | measured | predicted, `{FrameCurve.Radio.Name}` |";
        yield return "|---|---:|---:|";
        yield return $"| half of the frames arrive at | {Tenths(half)} dBm | {Tenths(predicted)} dBm |";
        yield return $"| from 10 % to 90 % in | {Tenths(width)} dB | {Tenths(predictedWidth)} dB |";
        yield return $"| plateau well above | {Hundredths(points.Where(point => point.LevelDbm is >= -80 and <= -70).Average(point => point.Share))} | 1.00 |";
        yield return "";
        yield return $"The half point lies {Tenths(half - predicted)} dB above ours, against a goal of 3 dB. The chip's makers state "
            + $"{Tenths(FrameCurve.StatedByMakerDbm)} dBm (from memory), so it should hear better than the class in our catalogue, not worse. "
            + "How much of it is the way it was measured? A burst's level is the mean over the frames that did arrive, those on their stronger moments, and "
            + "the register ends somewhere. Computed for "
            + "our receiver, with as many bursts at every level:";
        yield return "";
        foreach (string line in Sampled()) yield return line;
        yield return "";
        foreach (string line in Remains(half, predicted, points)) yield return line;
    }

    private static IEnumerable<string> Sampled()
    {
        yield return $"| frames within a burst | register without end: half arrive at, 10 % to 90 % in | register ends at {Tenths(FrameCurve.RegisterFloorDbm)} dBm |";
        yield return "|---|---:|---:|";
        foreach ((string name, BurstFading fading) in new[] { ("all the same", BurstFading.Steady), ("scatter by 2 dB", BurstFading.Scattered), ("Rayleigh", BurstFading.Rayleigh) })
        {
            (double LevelDbm, double Share)[] open = BurstSampling.Curve(FrameCurve.Receiver, fading, floorDbm: null);
            (double LevelDbm, double Share) lowest = BurstSampling.Curve(FrameCurve.Receiver, fading, FrameCurve.RegisterFloorDbm)[0];
            yield return $"| {name} | {Tenths(FrameCurve.LevelOf(0.5, open))} dBm, {Tenths(FrameCurve.LevelOf(0.9, open) - FrameCurve.LevelOf(0.1, open))} dB | "
                + $"{Hundredths(lowest.Share)} of the frames in its lowest bin, {Tenths(lowest.LevelDbm)} dBm |";
        }
    }

    private static IEnumerable<string> Remains(double half, double predicted, (double LevelDbm, double Share)[] points)
    {
        double Shift(BurstFading fading) => FrameCurve.LevelOf(0.5, BurstSampling.Curve(FrameCurve.Receiver, fading, floorDbm: null)) - predicted;
        double scatteredDb = Shift(BurstFading.Scattered), rest = half - predicted;
        double pile = FrameCurve.BurstsWithin(PileLowDbm, PileHighDbm), steps = (AboveHighDbm - AboveLowDbm + 1) / StepDb, step = FrameCurve.BurstsWithin(AboveLowDbm, AboveHighDbm) / steps;
        double piledDb = StepDb * (pile - step) / step;
        double atFloor = points.Single(point => point.LevelDbm == FrameCurve.RegisterFloorDbm).Share;
        yield return $"- Averaging over the frames that arrived moves the edge up by {Tenths(Shift(BurstFading.Rayleigh))} dB if frames fade as Rayleigh has it, but "
            + "makes it far wider than it is. "
            + $"The measured width allows for a scatter of some 2 dB, and that moves it by {Tenths(scatteredDb)} dB.";
        yield return $"- A register that is right and ends at {Tenths(FrameCurve.RegisterFloorDbm)} dBm does not explain it either: all that is weaker would be read "
            + $"there, and from a quarter to most of those frames arrive; measured were {Hundredths(atFloor)} of them.";
        yield return $"- Levels pile up at the edge: the register's step from {Tenths(PileLowDbm)} to {Tenths(PileHighDbm)} dBm holds {Count((int)pile)} bursts, the four "
            + $"above it {Count((int)step)} each. If weaker levels were no rarer, that is "
            + $"{Tenths(piledDb)} dB of them read too high: the true edge then lies {Tenths(piledDb)} dB lower than it seems.";
        yield return $"- Of {Tenths(rest)} dB {Tenths(rest - piledDb - scatteredDb)} dB remain. Such registers are stated to be right within 5 dB (from memory), which "
            + "would cover it; noise of other networks (the plateau shows them) raises the edge too. "
            + "That is a bound and no proof: nothing in the data tells these apart.";
        yield return "";
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"So the data confirm that the edge is steep, and do not show where it lies. No figure of the catalogue was changed for it. Other traffic keeps "
                + $"the plateau below 1; this program counts it as interference where a home names it.");
    }
}
