using MeshSim.OpenData.Tests.Accuracy.Regression;

namespace MeshSim.OpenData.Tests.Accuracy.Page;

/// <summary>docs/accuracy.md.</summary>
internal static class AccuracyPage
{
    /// <summary>The text of the page.</summary>
    public static string Write()
    {
        List<string> lines = [.. SummaryChapter.Lines()];
        foreach (Assessment assessment in AccuracySets.All) Append(BuildingChapter.Of(assessment));
        Append(AssumptionChapter.Lines());
        Append(RadioChapters.WhoHearsWhom());
        Append(RadioChapters.SixLinksAt868());
        Append(RadioChapters.FramesAgainstLevel());
        return string.Join('\n', lines) + "\n";

        void Append(IEnumerable<string> chapter) => lines.AddRange(["", .. chapter]);
    }
}
