using MeshSim.Cli.Answers;
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
        string buy = count switch
        {
            0 => "Nothing to buy: no mains repeater is recommended.",
            1 => "Buy one mains repeater and plug it in where it is named below.",
            _ => $"Buy {Figures.Count(count)} mains repeaters and plug them in where they are named below.",
        };
        return Html.Paragraph(buy, "answer") + string.Concat(content.Answers.Select(Network));
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
