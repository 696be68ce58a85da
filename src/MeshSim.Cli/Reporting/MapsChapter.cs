using MeshSim.Cli.Answers;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Studies;

namespace MeshSim.Cli.Reporting;

/// <summary>The pictures, and the share of each room that is dark.</summary>
internal static class MapsChapter
{
    /// <summary>The chapter as HTML.</summary>
    public static string Of(ReportContent content) =>
        Html.Paragraph(
            "Each map is for a battery sensor carried around the storey as the house stands, without the repeaters recommended above. "
            + "Hatched: below the margin that a link must have to be planned with.")
        + string.Concat(content.Answers.Select(answer => Network(content, answer)));

    private static string Network(ReportContent content, NetworkAnswer answer) =>
        $"<h3>{Html.Text(answer.Coverage.Network.Name.Value)}</h3>\n"
        + Html.Paragraph(CoverageWords.Basis(answer.Coverage), "basis")
        + string.Concat(answer.Maps.Select(map => Html.Figure(content.Names.Picture(map), Caption(content, map))))
        + Html.Table(DarkRoomsTable.Of(answer.Maps));

    private static string Caption(ReportContent content, MarginMap map) =>
        $"{map.Network}, {map.Storey}: margin at {Figures.Plain(content.Options.ProbeHeightMetres)} m above the floor";
}
