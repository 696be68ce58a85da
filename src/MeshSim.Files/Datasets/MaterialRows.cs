using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Tables;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Files.Datasets;

/// <summary>Reads <c>materials.csv</c>.</summary>
internal static class MaterialRows
{
    private static readonly ValidRange Parameter = new(-10, 1e8, "");
    private static readonly ValidRange Gigahertz = new(1e-3, 1000, "GHz");

    /// <summary>Every row, all editions.</summary>
    public static ImmutableArray<Material> Materials() =>
        DatasetRows.Read("materials.csv", ["name", "edition", "a", "b", "c_s_per_m", "d", "min_ghz", "max_ghz", "source"], (row, problems) => new Material
        {
            Name = row.RequiredText("name") ?? "",
            Edition = row.RequiredText("edition") ?? "",
            A = row.RequiredNumber("a", Parameter) ?? 0,
            B = row.RequiredNumber("b", Parameter) ?? 0,
            C = row.RequiredNumber("c_s_per_m", Parameter) ?? 0,
            D = row.RequiredNumber("d", Parameter) ?? 0,
            FrequencyGigahertz = Range(row, problems),
            Source = row.RequiredNote("source"),
        });

    private static ValidRange Range(RowReader row, DiagnosticList problems)
    {
        double min = row.RequiredNumber("min_ghz", Gigahertz) ?? 0, max = row.RequiredNumber("max_ghz", Gigahertz) ?? 0;
        if (min > max) problems.Error(row.PlaceOf("max_ghz"), "the range is empty", "the greater frequency comes second");
        return new(min, max, "GHz");
    }
}
