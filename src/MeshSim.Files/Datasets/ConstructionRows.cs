using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Tables;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Files.Datasets;

/// <summary>Reads <c>constructions.csv</c>.</summary>
internal static class ConstructionRows
{
    /// <summary>How the uses are written, in files of every kind.</summary>
    public static readonly IReadOnlyDictionary<string, ConstructionUse> Uses = new Dictionary<string, ConstructionUse>
    {
        ["wall"] = ConstructionUse.Wall,
        ["door"] = ConstructionUse.Door,
        ["window"] = ConstructionUse.Window,
        ["floor"] = ConstructionUse.Floor,
        ["object"] = ConstructionUse.Object,
    };

    /// <summary>Accepted spread.</summary>
    public static readonly ValidRange SpreadDb = new(0, 30, "dB");

    /// <summary>Accepted stated losses.</summary>
    public static readonly ValidRange LossDb = new(0, 200, "dB");

    /// <summary>Frequencies at which a loss may be stated.</summary>
    public static readonly ValidRange StatedMegahertz = new(1, 100_000, "MHz");

    /// <summary>Every construction.</summary>
    /// <param name="material">The material of a name, or null.</param>
    public static ImmutableArray<Construction> Constructions(Func<string, Material?> material) =>
        DatasetRows.Read("constructions.csv", ["name", "use", "description", "layers", "stated", "spread_db", "spread_source", "source"], (row, problems) =>
        {
            Construction construction = new()
            {
                Name = new(row.RequiredText("name") ?? ""),
                Description = row.RequiredText("description") ?? "",
                Use = row.RequiredChoice("use", Uses) ?? default,
                Layers = Layers(row, material, problems),
                Stated = Stated(row, problems),
                Spread = new(row.RequiredNumber("spread_db", SpreadDb) ?? 0),
                SpreadSource = row.RequiredNote("spread_source"),
                Source = row.RequiredNote("source"),
            };
            if (construction.Layers.IsEmpty == construction.Stated.IsEmpty)
                problems.Error(row.PlaceOf("layers"), "a construction has either layers or stated losses", "fill in one of the two");
            return construction;
        });

    private static ImmutableArray<Layer> Layers(RowReader row, Func<string, Material?> material, DiagnosticList problems)
    {
        if (row.Note("layers") is not { Length: > 0 } text) return [];
        ParsedLayers parsed = LayerText.Parse(text, material);
        foreach (LayerProblem problem in parsed.Problems) problems.Error(row.PlaceOf("layers"), problem.Message, "put the catalogue right");
        return parsed.Layers;
    }

    // "433:15 | 868:18": megahertz, colon, decibels.
    private static ImmutableArray<StatedLoss> Stated(RowReader row, DiagnosticList problems)
    {
        if (row.Note("stated") is not { Length: > 0 } text) return [];
        ImmutableArray<StatedLoss>.Builder losses = ImmutableArray.CreateBuilder<StatedLoss>();
        foreach (string part in text.Split('|', StringSplitOptions.TrimEntries))
        {
            double?[] numbers = [.. part.Split(':').Select(number => NumberText.Parse(number))];
            bool isPair = numbers is [{ } megahertz, { } lossDb] && StatedMegahertz.Contains(megahertz) && LossDb.Contains(lossDb);
            if (!isPair)
                problems.Error(
                    row.PlaceOf("stated"),
                    $"{KnownNames.Quote(part)} is not a stated loss",
                    "write megahertz, a colon, decibels");
            else losses.Add(new(new(numbers[0]!.Value), new(numbers[1]!.Value)));
        }

        return [.. losses.OrderBy(loss => loss.Frequency)];
    }
}
