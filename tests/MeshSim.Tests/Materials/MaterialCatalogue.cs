using System.Collections.Immutable;
using System.Globalization;
using MeshSim.FloorPlans;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Tests.Materials;

/// <summary>The shipped materials and constructions, read plainly.</summary>
public static class MaterialCatalogue
{
    public const string DefaultEdition = "P.2040-3";

    private static readonly ImmutableDictionary<(string Name, string Edition), Material> Materials =
        PublishedTable.Catalogue("materials.csv").Rows.ToImmutableDictionary(row => (row["name"], row["edition"]), ToMaterial);

    /// <summary>All constructions of the catalogue by name.</summary>
    public static ImmutableDictionary<ConstructionName, Construction> Constructions { get; } =
        PublishedTable.Catalogue("constructions.csv").Rows.Select(ToConstruction).ToImmutableDictionary(construction => construction.Name);

    public static Material? Find(string name, string edition = DefaultEdition) =>
        Materials.GetValueOrDefault((name, edition)) ?? Materials.GetValueOrDefault((name, "assumed"));

    public static ImmutableArray<Layer> Layers(string text, string edition = DefaultEdition)
    {
        ParsedLayers parsed = LayerText.Parse(text, name => Find(name, edition));
        parsed.Problems.Should().BeEmpty("\"{0}\" must be readable", text);
        return parsed.Layers;
    }

    private static Material ToMaterial(PublishedRow row) => new()
    {
        Name = row["name"],
        Edition = row["edition"],
        A = row.Number("a"),
        B = row.Number("b"),
        C = row.Number("c_s_per_m"),
        D = row.Number("d"),
        FrequencyGigahertz = new(row.Number("min_ghz"), row.Number("max_ghz"), "GHz"),
        Source = row["source"],
    };

    private static Construction ToConstruction(PublishedRow row) => new()
    {
        Name = new(row["name"]),
        Description = row["description"],
        Use = Enum.Parse<ConstructionUse>(row["use"], ignoreCase: true),
        Layers = row["layers"].Length == 0 ? [] : Layers(row["layers"]),
        Stated = row["stated"].Length == 0 ? [] : [.. row["stated"].Split('|').Select(ToStated)],
        Spread = new(row.Number("spread_db")),
        Source = row["source"],
    };

    private static StatedLoss ToStated(string text)
    {
        string[] parts = text.Split(':');
        return new(
            new Frequency(double.Parse(parts[0], CultureInfo.InvariantCulture)),
            new Decibels(double.Parse(parts[1], CultureInfo.InvariantCulture)));
    }
}
