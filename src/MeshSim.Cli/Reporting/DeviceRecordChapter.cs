using System.Collections.Immutable;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Studies;

namespace MeshSim.Cli.Reporting;

/// <summary>Every device with where it is, what feeds it, how it comes out, and what drops then.</summary>
internal static class DeviceRecordChapter
{
    /// <summary>The chapter as HTML.</summary>
    public static string Of(ReportContent content, HtmlTables tables)
    {
        ImmutableArray<DeviceRecord>[] networks = [.. content.Answers.Select(answer => RecordStudy.Of(answer.Rehearsal))];
        ImmutableArray<string> removals = [.. networks.SelectMany(records => records).Select(DeviceRecordsTable.Removal).Distinct(StringComparer.Ordinal)];
        return $"<div class=\"caution\">\n{Html.List(RecordWords.Cautions)}</div>\n"
            + string.Concat(networks.Zip(content.Answers, (records, answer) =>
                Html.Heading(answer.Coverage.Network.Name.Value)
                + Html.Paragraph(RecordWords.Answer(records))
                + tables.Write(DeviceRecordsTable.Of(content.Home, records, removals), $"{answer.Coverage.Network.Name}: device record")))
            + (removals.IsEmpty ? "" : Html.Heading("How to take a device out") + Html.List(removals.Select((removal, index) => $"{DeviceRecordsTable.Name(index)}: {removal}")));
    }
}
