using MeshSim.Cli.Answers;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Studies;

namespace MeshSim.Cli.Reporting;

/// <summary>Every device with where it is, what feeds it, how it comes out, and what drops then.</summary>
internal static class DeviceRecordChapter
{
    /// <summary>The chapter as HTML.</summary>
    public static string Of(ReportContent content) =>
        $"<div class=\"caution\">\n{Html.List(RecordWords.Cautions)}</div>\n"
        + string.Concat(content.Answers.Select(answer => NetworkOf(content, answer)));

    private static string NetworkOf(ReportContent content, NetworkAnswer answer)
    {
        var records = RecordStudy.Of(answer.Rehearsal);
        return $"<h3>{Html.Text(answer.Coverage.Network.Name.Value)}</h3>\n"
            + Html.Paragraph(RecordWords.Answer(records))
            + string.Concat(records.Select(record => Html.Table(DeviceRecordTable.Of(content.Home, record))));
    }
}
