using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Studies;

namespace MeshSim.Cli.Reporting;

/// <summary>The chapters that are tables.</summary>
internal static class FigureChapters
{
    /// <summary>Routes of each network.</summary>
    public static string Routes(ReportContent content) => Each(content, coverage => Html.Table(RoutesTable.Of(coverage)));

    /// <summary>The links that matter to a person: those that routes use, and those that nearly work. A file has every pair.</summary>
    public static string Links(ReportContent content) => Each(content, coverage =>
    {
        HashSet<(DeviceId, DeviceId)> used = [.. coverage.Devices.SelectMany(LinksOf)];
        Link[] heard = [.. coverage.Links.Where(LinksTable.IsHeard)];
        Link[] shown = [.. heard.Where(link =>
            link.Margin < coverage.DesignMargin || used.Contains((link.From, link.To)) || used.Contains((link.To, link.From)))];
        return Html.Paragraph(
                $"{Figures.Counted(heard.Length, "pair")} of {Figures.Count(coverage.Links.Length)} hear each other. Here are the links that "
                + $"routes use and the weak ones; every pair with every item of its loss is in {ReportFiles.Links}.")
            + Html.Table(LinksTable.Of(coverage, shown));
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

    private static IEnumerable<(DeviceId From, DeviceId To)> LinksOf(DeviceReach reach) =>
        reach.Route is { } route ? route.Path.Zip(route.Path.Skip(1)) : [];

    private static string Each(ReportContent content, Func<NetworkCoverage, string> table) => string.Concat(content.Answers.Select(answer =>
        $"<h3>{Html.Text(answer.Coverage.Network.Name.Value)}</h3>\n" + table(answer.Coverage)));
}
