using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Drawing;

namespace MeshSim.Cli.Tables;

/// <summary>What is on which plan sheet.</summary>
internal static class SheetsTable
{
    /// <summary>A line a storey.</summary>
    public static Table Of(PlanSheetSet set) => new(
        [new("Storey"), new("Sheets"), new("Scale"), new("Paper"), new("Parts", true), new("Key sheets", true)],
        [
            .. set.Storeys.Select(storey => ImmutableArray.Create(
                storey.Storey.Value,
                Numbers(storey),
                FormattableString.Invariant($"1:{storey.Scale}"),
                $"{storey.Paper} {(storey.IsLandscape ? "landscape" : "portrait")}",
                Figures.Count(storey.PlanSheets),
                Figures.Count(storey.KeySheets))),
        ])
    {
        Notes = set.Storeys.Any(storey => storey.PlanSheets > 1) ? ["Parts: the storey is too large for one sheet; neighbouring parts share a strip 10 mm wide."] : [],
    };

    private static string Numbers(StoreySheets storey)
    {
        int last = storey.First + storey.PlanSheets + storey.KeySheets - 1;
        return last == storey.First ? Figures.Count(last) : FormattableString.Invariant($"{storey.First} to {last}");
    }
}
