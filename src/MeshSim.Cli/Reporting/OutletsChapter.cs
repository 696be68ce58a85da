using MeshSim.Cli.Tables;

namespace MeshSim.Cli.Reporting;

/// <summary>Where a repeater could be plugged in.</summary>
internal static class OutletsChapter
{
    /// <summary>The chapter as HTML.</summary>
    public static string Of(ReportContent content, HtmlTables tables)
    {
        int assumed = content.Home.Outlets.Count(outlet => outlet.IsAssumed);
        string origin = assumed == 0
            ? "These are the outlets that the home folder lists."
            : "The home folder lists no outlets, so these are assumed along the walls: look whether there really is one.";
        return Html.Paragraph(origin) + tables.Write(OutletsTable.Of(content.Home, content.Answers.Select(answer => answer.Placement)), "Outlets considered");
    }
}
