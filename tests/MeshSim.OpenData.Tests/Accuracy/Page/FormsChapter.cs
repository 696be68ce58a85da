using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;
using MeshSim.OpenData.Tests.Accuracy.Forms;
using static MeshSim.OpenData.Tests.Accuracy.Page.PageNumbers;

namespace MeshSim.OpenData.Tests.Accuracy.Page;

/// <summary>What walls cost together: the forms that were compared.</summary>
internal static class FormsChapter
{
    /// <summary>The lines of the chapter.</summary>
    public static IEnumerable<string> Lines()
    {
        ImmutableArray<CountedLink> flat = CountedLink.Of(AccuracySets.Flat.Building), office = CountedLink.Of(AccuracySets.Office.Building);
        yield return "## What walls cost together";
        yield return "";
        yield return "The forms between which the choice was made, S being the sum of the planning losses on the line. Plain least squares for offset, n, a and the "
            + "second constant, all free, one transmitter left out "
            + "in turn (RMSE, dB); in brackets n, a and the second constant of a fit to all links. Here no form has a prior to help it, so figures differ "
            + "from those of the program's fit above.";
        yield return "";
        yield return "| walls cost | flat | office |";
        yield return "|---|---:|---:|";
        yield return $"| nothing, distance alone | {Hundredths(AccuracySets.Flat.FiguresOf(AccuracySets.Flat.LeftOutOfLine()).RmseDb)} | "
            + $"{Hundredths(AccuracySets.Office.FiguresOf(AccuracySets.Office.LeftOutOfLine()).RmseDb)} |";
        foreach (WallForm form in WallForm.All) yield return $"| {form.Formula} | {Cell(form, flat)} | {Cell(form, office)} |";
        yield return "";
        yield return "Every form that saturates gains on the plain sum, by 0.4 dB and 0.6 to 0.7 dB, and they hardly differ among each other; "
            + "[models](models.md#walls-with-a-way-round) says why the sum of two powers was kept.";
    }

    private static string Cell(WallForm form, ImmutableArray<CountedLink> links)
    {
        Vector<double> all = FormFit.Of(form, links);
        return $"{Hundredths(FormFit.LeftOut(form, links).RmseDb)} ({Hundredths(all[1])}; {Hundredths(all[2])}{(form.Starts.IsEmpty ? "" : $"; {Hundredths(all[3])}")})";
    }
}
