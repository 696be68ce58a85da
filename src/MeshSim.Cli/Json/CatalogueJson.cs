using System.Collections.Immutable;
using MeshSim.Materials;

namespace MeshSim.Cli.Json;

/// <summary>One construction of the catalogue, as JSON.</summary>
internal sealed record CatalogueJson(
    string Construction,
    ConstructionUse Use,
    string Description,
    ImmutableArray<LayerJson> Layers,
    ImmutableArray<StatedLossJson> Stated,
    double SpreadDb,
    string SpreadSource,
    string Source)
{
    /// <summary>The record of a construction.</summary>
    public static CatalogueJson Of(Construction construction) => new(
        construction.Name.Value,
        construction.Use,
        construction.Description,
        LayerJson.Of(construction),
        StatedLossJson.Of(construction),
        construction.Spread.Value,
        construction.SpreadSource,
        construction.Source);
}

/// <summary>One layer.</summary>
internal sealed record LayerJson(string Material, double ThicknessMillimetres)
{
    /// <summary>The layers of a construction, front face first.</summary>
    public static ImmutableArray<LayerJson> Of(Construction construction) =>
        [.. construction.Layers.Select(layer => new LayerJson(layer.Material.Name, layer.ThicknessMetres * 1000))];
}

/// <summary>One stated loss.</summary>
internal sealed record StatedLossJson(double FrequencyMegahertz, double LossDb)
{
    /// <summary>The stated losses of a construction, in order of frequency.</summary>
    public static ImmutableArray<StatedLossJson> Of(Construction construction) =>
        [.. construction.Stated.Select(stated => new StatedLossJson(stated.Frequency.Megahertz, stated.Loss.Value))];
}
