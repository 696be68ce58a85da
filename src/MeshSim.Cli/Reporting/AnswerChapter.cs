using MeshSim.Cli.Commands;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;

namespace MeshSim.Cli.Reporting;

/// <summary>What to buy and where to put it, and what stays out of reach.</summary>
internal static class AnswerChapter
{
    /// <summary>The chapter as HTML.</summary>
    public static string Of(ReportContent content)
    {
        int count = content.Answers.Sum(answer => answer.Placement.Repeaters.Length);
        string buy = count == 0 ? "Nothing to buy: no mains repeater is recommended." : $"Buy {Figures.Counted(count, "mains repeater")} and plug them in as told below.";
        return Html.Paragraph(count == 1 ? buy.Replace("them", "it", StringComparison.Ordinal) : buy, "answer") + string.Concat(content.Answers.Select(Network));
    }

    private static string Network(NetworkAnswer answer)
    {
        string html = $"<h3>{Html.Text(answer.Coverage.Network.Name.Value)}: {Html.Text(answer.Coverage.Network.Radio.Description)}</h3>\n"
            + Html.Paragraph(CoverageWords.Answer(answer.Coverage))
            + Html.Paragraph(RepeaterWords.Answer(answer.Coverage, answer.Placement))
            + Html.Paragraph(DarkWords.Answer(answer.Maps));
        if (!answer.Placement.Repeaters.IsEmpty) html += Html.Table(RepeatersTable.Of(answer.Placement));
        if (!answer.Placement.Unserved.IsEmpty) html += Html.Table(RepeatersTable.Unserved(answer.Placement));
        return html;
    }
}
