using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Devices;

namespace MeshSim.Cli.Reporting;

/// <summary>Where a repeater could be plugged in.</summary>
internal static class OutletsChapter
{
    /// <summary>The chapter as HTML.</summary>
    public static string Of(ReportContent content, HtmlTables tables)
    {
        HashSet<OutletId> chosen = [.. content.Answers.SelectMany(answer => answer.Placement.Repeaters).Select(repeater => repeater.Outlet.Id)];
        int assumed = content.Home.Outlets.Count(outlet => outlet.IsAssumed);
        string origin = assumed == 0
            ? "These are the outlets that the home folder lists."
            : $"{Figures.Counted(assumed, "outlet")} along the walls {(assumed == 1 ? "is" : "are")} assumed, because the home folder lists none. "
                + "Where one is recommended, look whether there really is one.";

        // Nobody can check a list of outlets that are not there; of the assumed ones only those matter that are recommended.
        Home shown = content.Home with { Outlets = [.. content.Home.Outlets.Where(outlet => !outlet.IsAssumed || chosen.Contains(outlet.Id))] };
        return Html.Paragraph(origin) + tables.Write(OutletsTable.Of(shown, content.Answers.Select(answer => answer.Placement)), "Outlets considered");
    }
}
