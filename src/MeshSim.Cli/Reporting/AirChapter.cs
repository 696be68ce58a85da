using System.Collections.Immutable;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Studies;

namespace MeshSim.Cli.Reporting;

/// <summary>Channels, time on the air, and what disturbs.</summary>
internal static class AirChapter
{
    /// <summary>The chapter as HTML.</summary>
    public static string Of(ReportContent content)
    {
        string[] networks = [.. content.Answers.Select(answer => Network(answer.Coverage)).Where(html => html.Length > 0)];
        return networks.Length == 0
            ? Html.Paragraph("No access point disturbs these networks, and their bands set no limit of time.")
            : string.Concat(networks);
    }

    private static string Network(NetworkCoverage coverage)
    {
        NetworkAir air = AirStudy.Run(coverage);
        ImmutableArray<string> sentences = [.. AirWords.Of(coverage, air)];
        if (sentences.IsEmpty) return "";
        return $"<h3>{Html.Text(coverage.Network.Name.Value)}</h3>\n"
            + string.Concat(sentences.Select(sentence => Html.Paragraph(sentence)))
            + (air.Channels.IsEmpty ? "" : Html.Table(ChannelsTable.Of(coverage.Network, air)));
    }
}
