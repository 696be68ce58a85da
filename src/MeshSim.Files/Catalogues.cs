using System.Collections.Immutable;
using MeshSim.Files.Datasets;
using MeshSim.FloorPlans;
using MeshSim.Materials;
using MeshSim.Radio;

namespace MeshSim.Files;

/// <summary>The catalogues that come with the program. Each row has its source.</summary>
public static class Catalogues
{
    /// <summary>
    /// Where more than one edition has a material, the first of these counts: the edition that planning uses, then what no
    /// edition has, then the others.
    /// </summary>
    private static readonly ImmutableArray<string> EditionsByPreference = ["P.2040-3", "assumed", "P.2040-4", "P.2040-1"];

    private static readonly Lazy<ImmutableArray<Material>> LoadedMaterials = new(MaterialRows.Materials);
    private static readonly Lazy<ImmutableDictionary<string, Material>> LoadedPlanningMaterials = new(ChooseEditions);
    private static readonly Lazy<ImmutableArray<Construction>> LoadedConstructions = new(() => ConstructionRows.Constructions(FindMaterial));
    private static readonly Lazy<ImmutableDictionary<ConstructionName, Construction>> LoadedConstructionsByName =
        new(() => Constructions.ToImmutableDictionary(construction => construction.Name));

    private static readonly Lazy<ImmutableArray<RadioProfile>> LoadedRadios = new(RadioRows.Radios);
    private static readonly Lazy<ImmutableArray<Mounting>> LoadedMountings = new(RadioRows.Mountings);
    private static readonly Lazy<ImmutableArray<BandLimit>> LoadedBandLimits = new(RadioRows.BandLimits);

    /// <summary>Every row of <c>materials.csv</c>: a material occurs once per edition.</summary>
    public static ImmutableArray<Material> Materials => LoadedMaterials.Value;

    /// <summary>The constructions, in the order of <c>constructions.csv</c>.</summary>
    public static ImmutableArray<Construction> Constructions => LoadedConstructions.Value;

    /// <summary>The constructions by name.</summary>
    public static ImmutableDictionary<ConstructionName, Construction> ConstructionsByName => LoadedConstructionsByName.Value;

    /// <summary>The radio profiles, in the order of <c>radios.csv</c>.</summary>
    public static ImmutableArray<RadioProfile> Radios => LoadedRadios.Value;

    /// <summary>The mountings, in the order of <c>mountings.csv</c>.</summary>
    public static ImmutableArray<Mounting> Mountings => LoadedMountings.Value;

    /// <summary>The band limits of all regions, in the order of <c>band-limits.csv</c>.</summary>
    public static ImmutableArray<BandLimit> BandLimits => LoadedBandLimits.Value;

    /// <summary>The regions that have band limits, in the order of <c>band-limits.csv</c>.</summary>
    public static ImmutableArray<string> Regions => [.. BandLimits.Select(limit => limit.Region).Distinct()];

    /// <summary>The names of the materials that layers may be made of, in order.</summary>
    public static ImmutableArray<string> MaterialNames => [.. LoadedPlanningMaterials.Value.Keys.Order(StringComparer.Ordinal)];

    /// <summary>The material of a name as planning uses it, or null when there is none.</summary>
    public static Material? FindMaterial(string name) => LoadedPlanningMaterials.Value.GetValueOrDefault(name);

    private static ImmutableDictionary<string, Material> ChooseEditions() =>
        Materials
            .GroupBy(material => material.Name)
            .ToImmutableDictionary(rows => rows.Key, rows => rows.MinBy(material => EditionsByPreference.IndexOf(material.Edition))!);
}
