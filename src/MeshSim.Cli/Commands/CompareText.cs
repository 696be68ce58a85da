using MeshSim.Cli.Answers;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Studies.Changes;

namespace MeshSim.Cli.Commands;

/// <summary>The text of <c>compare</c>: the answer first, then what was changed, then each network.</summary>
internal static class CompareText
{
    /// <summary>The text of a comparison.</summary>
    public static string Of(HomeComparison comparison, int width)
    {
        string text = TextTable.Paragraph(CompareWords.Answer(comparison), width) + TextTable.Paragraph(CompareWords.Basis(comparison), width);
        foreach (string caveat in CompareWords.Caveats(comparison)) text += TextTable.Paragraph(caveat, width);
        text += Section(ChangeTables.Home(comparison.Changes), width);
        return text + string.Concat(comparison.Networks.Select(network => Network(network, width)));
    }

    private static string Network(NetworkChanges network, int width) =>
        "\n" + TextTable.Paragraph(CompareWords.Network(network), width)
        + Section(ChangeTables.Ways(network), width)
        + Section(ChangeTables.Outages(network), width)
        + Section(ChangeTables.Rooms(network), width);

    private static string Section(Table table, int width) => table.Rows.IsEmpty ? "" : "\n" + TextTable.Render(table, width);
}
