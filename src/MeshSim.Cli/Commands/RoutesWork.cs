using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Tables;
using MeshSim.Radio;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>routes</c>.</summary>
internal static class RoutesWork
{
    /// <summary>Computes and writes the routes.</summary>
    public static ExitCode Run(RoutesCommand shape, ParseResult parsed, Terminal terminal)
    {
        string? file = parsed.GetValue(shape.Out);
        Result.Refuse(file);
        ImmutableArray<NetworkCoverage> coverages = StudyRequest.Read(shape.Study, parsed, terminal).Cover();
        string result = parsed.GetValue(shape.Study.Json)
            ? JsonText.OfEach(coverages.Select(RoutesJson.Of))
            : CoverageText.Of(coverages, terminal.Width, coverage => Section(coverage, terminal.Width));
        Result.Write(terminal, file, result);
        return CoverageText.Code(coverages);
    }

    private static string Section(NetworkCoverage coverage, int width)
    {
        string routes = TextTable.Render(RoutesTable.Of(coverage), width);
        bool isMesh = coverage.Network.Radio.Topology == Topology.Mesh;
        return isMesh && coverage.Devices.Any(reach => reach.IsReached) ? routes + "\n" + TextTable.Render(SecondWaysTable.Of(coverage), width) : routes;
    }
}
