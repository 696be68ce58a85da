using MeshSim.Cli.Answers;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Placement;
using MeshSim.Radio;

namespace MeshSim.Cli.Reporting;

/// <summary>What to buy and where to put it, and whom no repeater serves.</summary>
internal static class AnswerChapter
{
    /// <summary>The chapter as HTML.</summary>
    public static string Of(ReportContent content) =>
        $"<div class=\"answer\">\n{ToBuy(content)}{Unserved(content)}{AtRisk(content)}</div>\n" + string.Concat(content.Answers.Select(Network));

    private static string ToBuy(ReportContent content)
    {
        string[] places =
        [
            .. from answer in content.Answers
               from repeater in answer.Placement.Repeaters
               select $"{answer.Placement.Network}: into {RepeaterWords.Where(repeater.Outlet)}{For(repeater)}",
        ];
        return places.Length == 0
            ? Html.Paragraph("Nothing to buy: no mains repeater is recommended.")
            : Html.Paragraph($"Buy {Figures.Counted(places.Length, "mains repeater")} for the network named, and plug in:") + Html.List(places);
    }

    private static string For(PlacedRepeater repeater) => repeater.Serves.IsEmpty ? "" : $", for {string.Join(", ", repeater.Serves)}";

    private static string Unserved(ReportContent content)
    {
        string[] left = [.. content.Answers.SelectMany(Left)];
        bool adds = content.Answers.Any(answer => !answer.Placement.Repeaters.IsEmpty);
        return left.Length == 0
            ? Html.Paragraph(adds ? "With that, every device has a reliable way to its coordinator." : "Every device has a reliable way to its coordinator as the home stands.")
            : Html.Paragraph("No repeater gives these a reliable way; move the device, its coordinator or what stands between:") + Html.List(left);
    }

    private static string AtRisk(ReportContent content)
    {
        string[] risks = [.. content.Answers.SelectMany(answer => RiskWords.Of(answer).Select(risk => $"{answer.Placement.Network}: {risk}."))];
        return risks.Length == 0 ? "" : Html.Paragraph("At risk although it works as the home stands:") + Html.List(risks);
    }

    private static IEnumerable<string> Left(NetworkAnswer answer) =>
        answer.Coverage.Network.Radio.Topology == Topology.Star || CoverageWords.IsCoordinatorOff(answer.Coverage)
        ? CoverageWords.Unreached(answer.Coverage).Select(reach => $"{answer.Placement.Network}: {reach.Device} {Shortfall.InWords(answer.Coverage, reach)}")
        : answer.Placement.Unserved.Select(unserved => $"{answer.Placement.Network}: {unserved.Device} {RepeaterWords.Lack(unserved)}");

    private static string Network(NetworkAnswer answer)
    {
        string html = $"<h3>{Html.Text(answer.Coverage.Network.Name.Value)}: {Html.Text(answer.Coverage.Network.Radio.Description)}</h3>\n"
            + Html.Paragraph(CoverageWords.Answer(answer.Coverage))
            + Html.Paragraph(RepeaterWords.Answer(answer.Coverage, answer.Placement))
            + Html.Paragraph(DarkWords.Answer(answer.Maps));
        if (!answer.Placement.Repeaters.IsEmpty) html += Html.Table(RepeatersTable.Of(answer.Placement));
        return html;
    }
}
