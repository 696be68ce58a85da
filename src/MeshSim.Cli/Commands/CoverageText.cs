using System.Collections.Immutable;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The text that <c>links</c> and <c>routes</c> share: for each network the answer first, then a table.</summary>
internal static class CoverageText
{
    /// <summary>The text of some coverages.</summary>
    /// <param name="coverages">One network each.</param>
    /// <param name="width">Columns of a line.</param>
    /// <param name="section">The table of one, ended by a line feed.</param>
    public static string Of(ImmutableArray<NetworkCoverage> coverages, int width, Func<NetworkCoverage, string> section) =>
        string.Join('\n', coverages.Select(coverage =>
            TextTable.Paragraph(CoverageWords.Answer(coverage), width)
            + TextTable.Paragraph(CoverageWords.Basis(coverage), width)
            + "\n" + section(coverage)));

    /// <summary>Whether each device of each network is reached.</summary>
    public static ExitCode Code(ImmutableArray<NetworkCoverage> coverages) =>
        coverages.All(coverage => CoverageWords.Unreached(coverage).IsEmpty) ? ExitCode.Done : ExitCode.GoalNotMet;
}
