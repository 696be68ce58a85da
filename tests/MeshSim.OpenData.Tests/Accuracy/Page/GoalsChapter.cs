using MeshSim.OpenData.Tests.Accuracy.Fits;
using MeshSim.OpenData.Tests.Accuracy.Sets;
using MeshSim.Propagation;
using static MeshSim.OpenData.Tests.Accuracy.Page.PageNumbers;

namespace MeshSim.OpenData.Tests.Accuracy.Page;

/// <summary>What was asked of the program before it was held against the data, and what it reached.</summary>
internal static class GoalsChapter
{
    /// <summary>The lines of the chapter.</summary>
    public static IEnumerable<string> Lines()
    {
        yield return "## Goals";
        yield return "";
        yield return "Set before the program was held against the data, and left as they were.";
        yield return "";
        yield return "| what | goal | reached | |";
        yield return "|---|---:|---:|---|";
        foreach (string row in Rows()) yield return row;
    }

    private static IEnumerable<string> Rows()
    {
        Assessment flat = AccuracySets.Flat, office = AccuracySets.Office;
        yield return Most("flat, fitted, one receiver left out, RMSE", 4.2, flat.FiguresOf(flat.LeftOut(ModelName.Detour)).RmseDb);
        yield return Most("flat, catalogue and one offset, RMSE", 5, flat.ErrorsOf(flat.Catalogue(ModelName.Detour)).RmseDb);
        yield return Most("office, training points to test points, RMSE, an offset for each transmitter as `fit` has it", 7, office.SetApart(ModelName.Detour, hasOffsets: true).RmseDb);
        yield return Most("the same with one offset for all", 7, office.SetApart(ModelName.Detour, hasOffsets: false).RmseDb, "other phones on the test points; see there");
        foreach (Assessment hall in AccuracySets.All.Skip(2).Take(3))
            yield return Most(
                $"{hall.Building.Name.ToLowerInvariant()}, fitted, against distance only by least squares, RMSE",
                hall.ErrorsOf(hall.Line).RmseDb,
                hall.ErrorsOf(hall.Fitted(ModelName.Detour, hasOffsets: false)).RmseDb,
                $"n = 2 without a fit: {Hundredths(hall.ErrorsOf(hall.Catalogue(ModelName.Detour)).RmseDb)}");
        yield return Most("six links at 868 MHz, nothing fitted, mean error", 6, SixLinks.Read().Average(link => Math.Abs(link.ErrorDb)), "the link in the open is as far off");
        yield return Within("a heavy wall at 868 MHz, 200 mm concrete", 9.5, 3, SixLinks.LossDb("concrete-200"), "");
        yield return Within("the same as one brick", 9.5, 3, SixLinks.LossDb("brick-full"), "too thin; see there");
        yield return Within("a wooden wall at 868 MHz", 3, 3, SixLinks.LossDb("door-timber"), "");
        yield return Most(
            "level at which half of the frames arrive, difference",
            3,
            FrameCurve.LevelOf(0.5, FrameCurve.Read()) - FrameCurve.PredictedLevelOf(0.5),
            "explained in part; see there");
    }

    private static string Most(string what, double goalDb, double reachedDb, string remark = "") =>
        Row(what, $"≤ {Hundredths(goalDb)} dB", reachedDb, Math.Round(reachedDb, 2) <= Math.Round(goalDb, 2), remark);

    private static string Within(string what, double goalDb, double aboutDb, double reachedDb, string remark) =>
        Row(what, $"{Tenths(goalDb)} ± {Tenths(aboutDb)} dB", reachedDb, Math.Abs(reachedDb - goalDb) <= aboutDb, remark);

    private static string Row(string what, string goal, double reachedDb, bool isMet, string remark) =>
        $"| {what} | {goal} | {Hundredths(reachedDb)} dB | {(isMet ? "met" : "**missed**")}{(remark.Length > 0 ? $"; {remark}" : "")} |";
}
