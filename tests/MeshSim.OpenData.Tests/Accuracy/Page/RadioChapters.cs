using MeshSim.OpenData.Tests.Accuracy.Regression;
using MeshSim.OpenData.Tests.Accuracy.Sets;
using static MeshSim.OpenData.Tests.Accuracy.Page.PageNumbers;

namespace MeshSim.OpenData.Tests.Accuracy.Page;

/// <summary>What the page says beyond levels in buildings of known plan.</summary>
internal static class RadioChapters
{
    /// <summary>From which level on a phone hears an access point: the floor of its readings, dBm.</summary>
    public const double PhoneFloorDbm = -95;

    /// <summary>What a duller receiver would need, dBm: about the middle of the levels through walls.</summary>
    public const double DullerDbm = -75;

    /// <summary>Six links at 868 MHz.</summary>
    public static IEnumerable<string> SixLinksAt868()
    {
        SixthLink[] links = [.. SixLinks.Read()];
        double bias = links.Average(link => link.ErrorDb), open = links.Single(link => link.HeavyWalls + link.WoodWalls == 0).ErrorDb;
        yield return "## Six links at 868 MHz";
        yield return "";
        yield return "Six end devices and a gateway on the floor of a university; published are distance, number of walls, and mean levels over six months. Power and antennas "
            + "are stated, so nothing need be fitted. Each link is built as a row of that many walls.";
        yield return "";
        yield return "**Source.** N. M. Obiri, K. Van Laerhoven, IEEE Access 13 (2025) 83148, doi 10.1109/ACCESS.2025.3569164; data doi 10.5281/zenodo.15349730. "
            + $"**Licence.** CC BY 4.0. **Radio.** chirp modulation, 867 to 868.5 MHz, 14 dBm. **Assumed.** Heavy walls (\"brick\" in one place of the publication, \"concrete\" in another) are `{SixLinks.Heavy}`, wooden ones `{SixLinks.Wood}`.";
        yield return "";
        yield return "| link | m | heavy walls | wooden walls | measured dB | predicted dB | error dB |";
        yield return "|---|---:|---:|---:|---:|---:|---:|";
        foreach (SixthLink link in links)
            yield return $"| {link.Name} | {Count((int)link.DistanceMetres)} | {Count(link.HeavyWalls)} | {Count(link.WoodWalls)} | {Tenths(link.MeasuredDb)} | {Tenths(link.PredictedDb)} | {Tenths(link.ErrorDb)} |";
        yield return "";
        yield return $"Mean error, either way, with nothing fitted: **{Tenths(links.Average(link => Math.Abs(link.ErrorDb)))} dB**. That is far off, and walls are not the reason: the link without any wall, 10 m long, "
            + $"was measured {Tenths(-open)} dB above free space already, and all six share that much. A loss that is there without a wall belongs to the ends (antennas low on desks, "
            + $"housings, connectors, the receiver's register). What is left grows with the number of walls, wooden ones first. With one offset for the set the mean error is {Tenths(links.Average(link => Math.Abs(link.ErrorDb - bias)))} dB.";
        yield return "";
        yield return "| a wall | by the data | catalogue at 868 MHz |";
        yield return "|---|---|---|";
        yield return $"| heavy | 9.0 to 9.7 dB (regressions of the six means and of all packets) | 200 mm concrete {Tenths(SixLinks.LossDb("concrete-200"))}, cavity wall {Tenths(SixLinks.LossDb("cavity-brick"))}, one brick {Tenths(SixLinks.LossDb("brick-full"))}, half brick {Tenths(SixLinks.LossDb("brick-half"))} |";
        yield return $"| wooden | 2.6 to 3.6 dB | solid 44 mm {Tenths(SixLinks.LossDb("door-timber"))}, stud partition {Tenths(SixLinks.LossDb("stud-partition"))}, 200 mm timber {Tenths(SixLinks.LossDb("log-wall"))} |";
        yield return "";
        yield return "Concrete and cavity walls are within 3 dB of the measured heavy wall, solid brick is not; wooden ones are within 3 dB, on the low side. The measured figures take with them what stands along a wall, "
            + "and rest on six links.";
    }

    /// <summary>Who hears whom.</summary>
    public static IEnumerable<string> WhoHearsWhom()
    {
        Assessment office = AccuracySets.Office;
        yield return "## Who hears whom";
        yield return "";
        yield return $"On the office floor, over all {Count(office.Building.Links.Length)} links. Heard means: in at least half of the samples, at a mean level of what the receiver needs or more. A receiver that needs {Tenths(PhoneFloorDbm)} dBm "
            + $"is the phone itself; one that needs {Tenths(DullerDbm)} dBm stands for a duller one. Predicted means: a predicted level of as much. Fitted laws know the levels of the heard links.";
        yield return "";
        yield return "| needs dBm | law | precision | recall | F1 | both | only predicted | only heard | neither |";
        yield return "|---:|---|---:|---:|---:|---:|---:|---:|---:|";
        foreach (double neededDbm in (double[])[PhoneFloorDbm, DullerDbm])
        {
            foreach ((string name, LevelLaw law) in LawsOf(office))
            {
                HearingFigures hearing = HearingFigures.Of(law, office.Building, neededDbm);
                yield return FormattableString.Invariant($"| {Tenths(neededDbm)} | {name} | {hearing.Precision:0.000} | {hearing.Recall:0.000} | {hearing.F1:0.000} | ")
                    + FormattableString.Invariant($"{hearing.Both} | {hearing.OnlyPredicted} | {hearing.OnlyHeard} | {hearing.Neither} |");
            }
        }

        yield return "";
        yield return "At the very floor of the phones a law with a way round predicts no silence at all, as its levels end where the way round does; the plain sum of the catalogue "
            + "finds two thirds of the silent links, and calls three times as many silent that were heard. Where the need is higher both tell the two apart well, and distance alone does not. In the halls every pair heard each other, and every pair is predicted to.";
    }

    private static IEnumerable<(string Name, LevelLaw Law)> LawsOf(Assessment office)
    {
        yield return ("distance only, fitted", LevelFit.Of(WallForm.None, office.Points));
        yield return ("log-distance, catalogue", LevelLaw.Catalogue(WallForm.Sum).WithOffsetFor(office.Points));
        yield return ("log-distance, fitted", LevelFit.Of(WallForm.Sum, office.Points));
        yield return ("detour, catalogue", LevelLaw.Catalogue(WallForm.Detour).WithOffsetFor(office.Points));
        yield return ("detour, fitted", LevelFit.Of(WallForm.Detour, office.Points));
    }

    /// <summary>Frames against level.</summary>
    public static IEnumerable<string> FramesAgainstLevel()
    {
        (double LevelDbm, double Share)[] points = FrameCurve.Read();
        double half = FrameCurve.LevelOf(0.5, points), predicted = FrameCurve.PredictedLevelOf(0.5);
        double width = FrameCurve.LevelOf(0.9, points) - FrameCurve.LevelOf(0.1, points), predictedWidth = FrameCurve.PredictedLevelOf(0.9) - FrameCurve.PredictedLevelOf(0.1);
        yield return "## Frames that arrive, against level";
        yield return "";
        yield return $"Bursts of 100 frames of {FrameCurve.Octets} octets between IEEE 802.15.4 nodes indoors, each burst's mean level and share of frames that arrived (1,530,960 bursts of the Grenoble site). "
            + "**Source.** K. Brun-Laguna et al., \"dense connectivity\" data sets, 2016 to 2018. **Licence.** None stated.";
        yield return "";
        yield return $"| | measured | predicted, `{FrameCurve.Radio.Name}` |";
        yield return "|---|---:|---:|";
        yield return $"| half of the frames arrive at | {Tenths(half)} dBm | {Tenths(predicted)} dBm |";
        yield return $"| from 10 % to 90 % in | {Tenths(width)} dB | {Tenths(predictedWidth)} dB |";
        yield return $"| plateau well above | {Hundredths(points.Where(point => point.LevelDbm is >= -80 and <= -70).Average(point => point.Share))} | 1.00 |";
        yield return "";
        yield return $"The half point lies {Tenths(half - predicted)} dB above ours, more than 3 dB. The chip's makers state {Tenths(FrameCurve.StatedByMakerDbm)} dBm (from memory), so it hears better than the class in our catalogue, "
            + $"not worse; and yet frames seem to vanish at {Tenths(half)} dBm. Two things of the measurement explain it. Its register ends at {Tenths(FrameCurve.RegisterFloorDbm)} dBm: whatever is weaker reads about "
            + "as that, so the foot of the curve is pushed together from below. And a burst's level is the mean over the frames that did arrive, those on their stronger moments, which moves the edge up; a burst "
            + "without any has no level at all. Registers of such chips are stated to be right within some 5 dB (from memory). The data show that the edge is steep (measured a decibel wider than computed, levels being means in steps of 1 dB), and that other traffic keeps the plateau below 1, which this program counts as interference where a home names it; they do not show "
            + "where the edge of the radio lies. No figure of the catalogue was changed for it.";
    }
}
