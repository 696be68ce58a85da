using System.Collections.Immutable;
using MeshSim.Propagation;

namespace MeshSim.Cli.Wording;

/// <summary>The path-loss models as people name them on the command line.</summary>
internal static class ModelWords
{
    private static readonly ImmutableArray<ModelName> Models = [ModelName.Detour, ModelName.LogDistance, ModelName.MultiWall, ModelName.SiteGeneral];

    /// <summary>All names, the default first.</summary>
    public static string[] All => [.. Models.Select(ModelNames.Of)];

    /// <summary>The model of a name, which is one of <see cref="All"/>.</summary>
    public static ModelName Parse(string word) => Models.First(model => ModelNames.Of(model) == word);
}
