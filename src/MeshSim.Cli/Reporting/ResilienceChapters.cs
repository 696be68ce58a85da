using MeshSim.Cli.Answers;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;

namespace MeshSim.Cli.Reporting;

/// <summary>Who carries the mesh, and what happens when something is off: the tables of the commands of the same names.</summary>
internal static class ResilienceChapters
{
    /// <summary>Which mains devices carry each network.</summary>
    public static string Routers(ReportContent content) => Each(content, answer =>
        Html.Paragraph(RouterWords.Answer(answer.Routers))
        + Html.Paragraph(RouterWords.Help(answer.Routers))
        + (answer.Routers.Duties.IsEmpty ? "" : Html.Table(RoutersTable.Duties(answer.Routers)))
        + (answer.Routers.NewRouters.IsEmpty ? "" : Html.Table(RoutersTable.Help(answer.Routers))));

    /// <summary>Outages of each network, and the chance that a device is connected.</summary>
    public static string Rehearsals(ReportContent content) => Each(content, answer =>
        Html.Paragraph(OutageWords.Answer(answer.Rehearsal))
        + (answer.Rehearsal.Rehearsals.IsEmpty ? "" : Html.Table(RehearsalTables.Kinds(answer.Rehearsal)))
        + (RehearsalTables.Costly(answer.Rehearsal).IsEmpty ? "" : Html.Table(RehearsalTables.Outages(answer.Rehearsal)))
        + (answer.Rehearsal.Chances.IsEmpty ? "" : Html.Table(RehearsalTables.Chances(answer.Rehearsal))));

    private static string Each(ReportContent content, Func<NetworkAnswer, string> body) => string.Concat(content.Answers.Select(answer =>
        $"<h3>{Html.Text(answer.Coverage.Network.Name.Value)}</h3>\n" + body(answer)));
}
