using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Mesh;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>links</c>.</summary>
internal static class LinksWork
{
    /// <summary>Computes and writes the links.</summary>
    public static ExitCode Run(LinksCommand shape, ParseResult parsed, Terminal terminal)
    {
        string? file = parsed.GetValue(shape.Out);
        Result.Refuse(file);
        double pollSeconds = parsed.GetValue(shape.Poll);
        ImmutableArray<NetworkCoverage> coverages = StudyRequest.Read(shape.Study, parsed, terminal).Cover();
        string result = parsed.GetValue(shape.Study.Json)
            ? JsonText.OfEach(coverages.Select(coverage => LinksJson.Of(coverage, pollSeconds)))
            : CoverageText.Of(coverages, terminal.Width, coverage => Section(coverage, parsed.GetValue(shape.All), pollSeconds, terminal.Width));
        Result.Write(terminal, file, result);
        return CoverageText.Code(coverages);
    }

    private static string Section(NetworkCoverage coverage, bool all, double pollSeconds, int width)
    {
        Link[] shown = [.. coverage.Links.Where(link => all || LinksTable.IsHeard(link))];
        int hidden = coverage.Links.Length - shown.Length;
        string table = TextTable.Render(LinksTable.Of(coverage, shown), width);
        if (hidden > 0) table += Hidden(hidden, width);
        return table + Air(coverage, pollSeconds, width);
    }

    private static string Hidden(int hidden, int width) =>
        TextTable.Paragraph($"Not heard: {Figures.Counted(hidden, "further pair")}; --all shows them.", width);

    private static string Air(NetworkCoverage coverage, double pollSeconds, int width)
    {
        NetworkAir air = AirStudy.Run(coverage);
        string sentences = string.Concat(AirWords.Of(coverage, air, pollSeconds).Select(sentence => TextTable.Paragraph(sentence, width)));
        string channels = air.Channels.IsEmpty ? "" : "\n" + TextTable.Render(ChannelsTable.Of(coverage.Network, air), width);
        return sentences.Length == 0 ? "" : "\n" + sentences + channels;
    }
}
