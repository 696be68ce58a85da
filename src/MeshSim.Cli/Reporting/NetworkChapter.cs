using System.Collections.Immutable;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Drawing;
using MeshSim.Studies;

namespace MeshSim.Cli.Reporting;

/// <summary>All about one network: maps, ways, who carries it, what happens when something is off, dropouts with fixes, the air.</summary>
/// <param name="content">The report.</param>
/// <param name="tables">Writes its tables.</param>
internal sealed class NetworkChapter(ReportContent content, HtmlTables tables)
{
    /// <summary>The chapter as HTML.</summary>
    /// <param name="answer">The network's answer.</param>
    /// <param name="id">Begins the ids of its pictures.</param>
    public string Of(NetworkAnswer answer, string id) =>
        Html.Paragraph(CoverageWords.Answer(answer.Coverage))
        + Html.Paragraph(RepeaterWords.Whole(answer.Coverage, answer.Placement))
        + Html.Paragraph(DarkWords.Answer(answer.Maps))
        + Html.Paragraph(CoverageWords.Basis(answer.Coverage), "basis")
        + Maps(answer, id)
        + (answer.Placement.Repeaters.IsEmpty ? "" : tables.Write(RepeatersTable.Of(answer.Placement), "Recommended repeaters"))
        + (answer.Placement.KeptOn.IsEmpty ? "" : tables.Write(KeptTable.Of(answer.Placement), "Devices to keep powered"))
        + Ways(answer)
        + Dropouts(answer)
        + Carriers(answer)
        + Outages(answer)
        + Air(answer);

    private string Maps(NetworkAnswer answer, string id) => string.Concat(
        HousePicture.Inline(answer.Coverage, answer.Maps, answer.Placement, id).Select(picture => Html.Figure(
            picture,
            $"{answer.Coverage.Network.Name}: margin at {Figures.Plain(content.Options.ProbeHeightMetres)} m above the floor. {DarkWords.Answer(answer.Maps)}",
            "map")));

    private string Ways(NetworkAnswer answer) => answer.Coverage.Devices.IsEmpty
        ? ""
        : Html.Heading("Ways to the coordinator") + tables.Write(WaysTable.Of(answer.Coverage), $"{answer.Coverage.Network.Name}: the way of each device, and what is left when it fails");

    private string Dropouts(NetworkAnswer answer)
    {
        if (answer.Explanations.IsEmpty) return "";
        int unexplained = CoverageWords.Unreached(answer.Coverage).Length - answer.Explanations.Length;
        return Html.Heading("Dropouts, and what would help")
            + string.Concat(answer.Explanations.Select(Dropout))
            + (unexplained > 0 ? Html.Paragraph($"{Figures.Counted(unexplained, "further device")} without a reliable way: ask meshsim explain.") : "")
            + (answer.Explanations.SelectMany(explanation => explanation.Fixes.Take(FixTables.Foremost)).Any(fix => fix.Fix.TouchesWiring) ? Html.Paragraph(FixTables.Mains, "note") : "");
    }

    private string Dropout(DeviceExplanation explanation) =>
        Html.Paragraph(ExplainWords.Answer(explanation))
        + (explanation.Budget is { } budget ? Html.Paragraph(BudgetWords.Losses(budget), "note") : "")
        + string.Concat(ExplainWords.Situations(explanation).Select(situation => Html.Paragraph(situation, "note")))
        + (explanation.Fixes.IsEmpty ? "" : tables.Write(FixTables.Best(explanation), $"{explanation.Device.Id}: fixes, each tried on the home by itself"));

    private string Carriers(NetworkAnswer answer) =>
        Html.Heading("Devices that carry the network")
        + Html.Paragraph(RouterWords.Answer(answer.Routers))
        + Html.Paragraph(RouterWords.Help(answer.Routers))
        + (RoutersTable.Matter(answer.Routers) is { Rows.IsEmpty: false } table ? tables.Write(table, $"{answer.Coverage.Network.Name}: mains devices that others need or use") : "");

    private string Outages(NetworkAnswer answer) =>
        Html.Heading("States, switches, circuits and chance")
        + Html.Paragraph(OutageWords.Answer(answer.Rehearsal))
        + (RehearsalTables.Costly(answer.Rehearsal).IsEmpty
            ? ""
            : tables.Write(RehearsalTables.Outages(answer.Rehearsal), $"{answer.Coverage.Network.Name}: what costs somebody something when it is off"))
        + (answer.Rehearsal.Chances.IsEmpty
            ? ""
            : tables.Write(RehearsalTables.Chances(answer.Rehearsal), $"{answer.Coverage.Network.Name}: how often the less certain devices are connected"));

    private string Air(NetworkAnswer answer)
    {
        NetworkAir air = AirStudy.Run(answer.Coverage);
        ImmutableArray<string> sentences = [.. AirWords.Of(answer.Coverage, air)];
        if (sentences.IsEmpty) return "";
        return Html.Heading("Channel and time on the air")
            + string.Concat(sentences.Select(sentence => Html.Paragraph(sentence)))
            + (air.Channels.IsEmpty ? "" : tables.Write(ChannelsTable.Of(answer.Coverage.Network, air), $"{answer.Coverage.Network.Name}: channels and what disturbs them"));
    }
}
