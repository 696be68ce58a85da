using System.Globalization;
using MeshSim.OpenData.Tests.Accuracy.Fits;
using MeshSim.Propagation;
using static MeshSim.OpenData.Tests.Accuracy.Page.PageNumbers;

namespace MeshSim.OpenData.Tests.Accuracy.Page;

/// <summary>Who hears whom.</summary>
internal static class HearingChapter
{
    /// <summary>From which level on a phone hears an access point: the floor of its readings, dBm.</summary>
    private const double PhoneFloorDbm = -95;

    /// <summary>What a duller receiver would need, dBm: about the middle of the levels through walls.</summary>
    private const double DullerDbm = -75;

    /// <summary>The lines of the chapter.</summary>
    public static IEnumerable<string> Lines()
    {
        Assessment office = AccuracySets.Office;
        int heard = office.Heard.Length, all = office.Building.Links.Length;
        double always = 2.0 * heard / (all + heard);
        yield return "## Who hears whom";
        yield return "";
        yield return $"On the office floor, over all {Count(all)} links. Heard means: in at least half of the samples, at a mean level of what the receiver needs or "
            + $"more. A receiver that needs {Tenths(PhoneFloorDbm)} dBm "
            + $"is the phone itself; one that needs {Tenths(DullerDbm)} dBm stands for a duller one, about what a mesh radio has to spare where it counts. "
            + "Predicted means: a predicted level of as much. Fitted laws know the levels of the heard links, "
            + "the last one also that the silent ones lie below what the phone needs.";
        yield return "";
        yield return "| needs dBm | law | precision | recall | F1 | both | only predicted | only heard | neither |";
        yield return "|---:|---|---:|---:|---:|---:|---:|---:|---:|";
        foreach (double neededDbm in (double[])[PhoneFloorDbm, DullerDbm])
        {
            foreach ((string name, ILevelLaw law) in LawsOf(office))
            {
                HearingFigures hearing = HearingFigures.Of(law, office.Building, neededDbm);
                yield return FormattableString.Invariant($"| {Tenths(neededDbm)} | {name} | {hearing.Precision:0.000} | {hearing.Recall:0.000} | {hearing.F1:0.000} | ")
                    + FormattableString.Invariant($"{hearing.Both} | {hearing.OnlyPredicted} | {hearing.OnlyHeard} | {hearing.Neither} |");
            }
        }

        yield return "";
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"How to read it. At {Tenths(PhoneFloorDbm)} dBm only {all - heard} of {Count(all)} links are silent, so \"everybody hears everybody\" has an F1 "
                + $"of {always:0.000} already, and a high F1 says nothing: look at the last column. ")
            + "A law with a way round finds no silent link there, as its levels end where the way round does; the plain sum of the catalogue finds two thirds "
            + "of them, and calls three times as many silent that were heard. "
            + "Told that they are silent, the fit finds some. At the very floor none of the laws can be trusted to say who hears nothing; this is why a link "
            + "counts only with the design margin. "
            + "Where the need is higher, a third of the links lie below it, and the figures mean something: both models tell the two apart well, and distance "
            + "alone does not. In the halls every pair heard each other, and every pair is predicted to.";
    }

    private static IEnumerable<(string Name, ILevelLaw Law)> LawsOf(Assessment office)
    {
        yield return ("distance only, fitted", office.Line);
        yield return ("log-distance, catalogue", office.Catalogue(ModelName.LogDistance));
        yield return ("log-distance, fitted", office.Fitted(ModelName.LogDistance, hasOffsets: true));
        yield return ("detour, catalogue", office.Catalogue(ModelName.Detour));
        yield return ("detour, fitted", office.Fitted(ModelName.Detour, hasOffsets: true));
        yield return ("detour, fitted, silent links too", office.FittedWithSilent(ModelName.Detour, hasOffsets: true));
    }
}
