using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Mesh;
using MeshSim.Studies;

namespace MeshSim.Cli.Reporting;

/// <summary>The chapters that are tables.</summary>
internal static class FigureChapters
{
    /// <summary>Routes of each network.</summary>
    public static string Routes(ReportContent content) => Each(content, coverage => Html.Table(RoutesTable.Of(coverage)));

    /// <summary>Links of each network that are heard at all; the file beside the page has every pair with every item.</summary>
    public static string Links(ReportContent content) => Each(content, coverage =>
    {
        Link[] heard = [.. coverage.Links.Where(LinksTable.IsHeard)];
        return Html.Paragraph(
                $"{Figures.Counted(heard.Length, "pair")} of {Figures.Count(coverage.Links.Length)} hear each other. "
                + $"Every pair with every item of its loss is in {ReportFiles.Links}.")
            + Html.Table(LinksTable.Of(coverage, heard));
    });

    /// <summary>Outlets that a repeater could be plugged into.</summary>
    public static string Outlets(ReportContent content)
    {
        int assumed = content.Home.Outlets.Count(outlet => outlet.IsAssumed);
        string origin = assumed == 0
            ? "These are the outlets that the home folder lists."
            : "The home folder lists no outlets, so these are assumed along the walls: look whether there really is one.";
        return Html.Paragraph(origin) + Html.Table(OutletsTable.Of(content.Home, content.Answers.Select(answer => answer.Placement)));
    }

    private static string Each(ReportContent content, Func<NetworkCoverage, string> table) => string.Concat(content.Answers.Select(answer =>
        $"<h3>{Html.Text(answer.Coverage.Network.Name.Value)}</h3>\n" + table(answer.Coverage)));
}
