using System.Collections.Immutable;
using MeshSim.Files.Homes;
using MeshSim.FloorPlans;
using MeshSim.Materials;

namespace MeshSim.Files.Importing.Mappings;

/// <summary>What a mapping file says of a drawing; without a file, what is assumed of any.</summary>
internal sealed record ImportMapping
{
    /// <summary>Name of the home, or null.</summary>
    public string? Home { get; init; }

    /// <summary>Its region, or null.</summary>
    public string? Region { get; init; }

    /// <summary>Direction of north, degrees clockwise from up the page.</summary>
    public double NorthDegrees { get; init; }

    /// <summary>A line whose length is known, or null.</summary>
    public StatedLength? Length { get; init; }

    /// <summary>How many times smaller than the building the drawing is, or null.</summary>
    public double? Ratio { get; init; }

    /// <summary>The storeys, lowest first; empty for a single one.</summary>
    public ImmutableArray<StoreyRule> Storeys { get; init; } = [];

    /// <summary>What is taken for what; the first that fits counts.</summary>
    public ImmutableArray<TakeRule> Rules { get; init; } = [];

    /// <summary>The networks; empty for the usual one.</summary>
    public ImmutableArray<NetworkDocument> Networks { get; init; } = [];

    /// <summary>All constructions that may be named.</summary>
    public ImmutableDictionary<ConstructionName, Construction> Constructions { get; init; } = Catalogues.ConstructionsByName;
}
