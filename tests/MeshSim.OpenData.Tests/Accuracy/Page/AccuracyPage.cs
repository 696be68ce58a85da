using MeshSim.OpenData.Tests.Accuracy.Fits;

namespace MeshSim.OpenData.Tests.Accuracy.Page;

/// <summary>docs/accuracy.md.</summary>
internal static class AccuracyPage
{
    /// <summary>The text of the page.</summary>
    public static string Write()
    {
        List<string> lines = [.. SummaryChapter.Lines()];
        Append(GoalsChapter.Lines());
        foreach (Assessment assessment in AccuracySets.All) Append(BuildingChapter.Of(assessment));
        Append(AssumptionChapter.Lines());
        Append(FormsChapter.Lines());
        Append(HearingChapter.Lines());
        Append(SixLinksChapter.Lines());
        Append(FramesChapter.Lines());
        return string.Join('\n', lines) + "\n";

        void Append(IEnumerable<string> chapter) => lines.AddRange(["", .. chapter]);
    }
}
