using MeshSim.Files.Diagnostics;
using MeshSim.Materials;

namespace MeshSim.Files.Importing.Mappings;

/// <summary>A rule that fits a shape, and where among the shape's layers: the next one inwards names the thing that several shapes draw.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="LayerIndex">Index of the layer that decided; -1 when none did.</param>
internal readonly record struct RuleMatch(TakeRule Rule, int LayerIndex);

/// <summary>
/// Finds the rule for a shape: the first of the mapping that fits; else the conventions, by which a layer or class named for a
/// construction holds what is built of it, and some words say the rest. Capitals make no difference, nor does a space for a hyphen.
/// </summary>
internal sealed class RuleBook
{
    private static readonly Dictionary<string, Meaning> Words = new()
    {
        ["rooms"] = Meaning.Room,
        ["room"] = Meaning.Room,
        ["room-names"] = Meaning.RoomName,
        ["names"] = Meaning.RoomName,
        ["devices"] = Meaning.Device,
        ["device"] = Meaning.Device,
        ["outlets"] = Meaning.Outlet,
        ["outlet"] = Meaning.Outlet,
        ["stairwell"] = Meaning.Stairwell,
        ["stairwells"] = Meaning.Stairwell,
        ["nothing"] = Meaning.Nothing,
    };

    private readonly ImportMapping mapping;
    private readonly Dictionary<string, TakeRule> conventions = [];

    /// <summary>Makes a book for one drawing.</summary>
    public RuleBook(ImportMapping mapping, string drawing)
    {
        this.mapping = mapping;
        SourcePlace place = SourcePlace.StartOf(drawing);
        foreach (Construction construction in mapping.Constructions.Values)
        {
            if (MeaningOf(construction.Use) is { } meaning)
                conventions[Plain(construction.Name.Value)] = new() { Place = place, Meaning = meaning, Construction = construction.Name };
        }

        foreach ((string word, Meaning meaning) in Words) conventions[word] = new() { Place = place, Meaning = meaning };
    }

    /// <summary>The rule for a shape; null when none fits.</summary>
    public RuleMatch? Find(ShapeNames names)
    {
        foreach (TakeRule rule in mapping.Rules)
            if (Fits(rule, names, out int layer)) return new(rule, layer);

        for (int i = names.Layers.Length - 1; i >= 0; i--)
            if (conventions.TryGetValue(Plain(names.Layers[i]), out TakeRule? byLayer)) return new(byLayer, i);
        foreach (string name in names.Classes)
            if (conventions.TryGetValue(Plain(name), out TakeRule? byClass)) return new(byClass, -1);
        return null;
    }

    private static bool Fits(TakeRule rule, ShapeNames names, out int layer)
    {
        layer = -1;
        for (int i = 0; i < names.Layers.Length && rule.Layer is not null; i++)
            if (Same(rule.Layer, names.Layers[i])) layer = i;
        return (rule.Layer is null || layer >= 0)
            && (rule.Class is null || names.Classes.Any(name => Same(rule.Class, name)))
            && (rule.Id is null || IsCalled(rule.Id, names.Id) || IsCalled(rule.Id, names.Title))
            && (rule.Layer ?? rule.Class ?? rule.Id) is not null;
    }

    // A star at the end stands for any ending: editors number what is copied.
    private static bool IsCalled(string wanted, string? name) => name is not null
        && (wanted.EndsWith('*') ? Plain(name).StartsWith(Plain(wanted[..^1]), StringComparison.Ordinal) : Same(wanted, name));

    private static bool Same(string a, string b) => Plain(a) == Plain(b);

    private static string Plain(string name) => name.Trim().ToLowerInvariant().Replace(' ', '-').Replace('_', '-');

    private static Meaning? MeaningOf(ConstructionUse use) => use switch
    {
        ConstructionUse.Wall => Meaning.Wall,
        ConstructionUse.Door => Meaning.Door,
        ConstructionUse.Window => Meaning.Window,
        ConstructionUse.Object => Meaning.Object,
        _ => null,
    };
}
