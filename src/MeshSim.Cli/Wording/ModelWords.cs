using System.Collections.Immutable;
using MeshSim.Propagation;

namespace MeshSim.Cli.Wording;

/// <summary>The path-loss models as people name them on the command line.</summary>
internal static class ModelWords
{
    private static readonly ImmutableArray<(ModelName Model, string Word)> Words =
    [
        (ModelName.Detour, ModelNames.Detour),
        (ModelName.LogDistance, ModelNames.LogDistance),
        (ModelName.MultiWall, ModelNames.MultiWall),
        (ModelName.SiteGeneral, ModelNames.SiteGeneral),
    ];

    /// <summary>All names, the default first.</summary>
    public static string[] All => [.. Words.Select(pair => pair.Word)];

    /// <summary>The name of a model.</summary>
    public static string Of(ModelName model) => Words.First(pair => pair.Model == model).Word;

    /// <summary>The model of a name, which is one of <see cref="All"/>.</summary>
    public static ModelName Parse(string word) => Words.First(pair => pair.Word == word).Model;
}
