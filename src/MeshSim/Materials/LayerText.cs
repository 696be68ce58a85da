using System.Collections.Immutable;
using MeshSim.Quantities;

namespace MeshSim.Materials;

/// <summary>What is wrong with one part of a layer text.</summary>
public enum LayerProblemKind
{
    /// <summary>No layer at all, or nothing between two separators.</summary>
    Empty,

    /// <summary>A part without the colon that divides material and thickness.</summary>
    NoThickness,

    /// <summary>A material that the catalogue does not know.</summary>
    UnknownMaterial,

    /// <summary>A thickness that is no number, or none that a layer can have.</summary>
    BadThickness,

    /// <summary>More layers than <see cref="PlanningLoss.MaxLayers"/>.</summary>
    TooMany,
}

/// <summary>One problem of a layer text.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Start">Zero-based character at which <paramref name="Text"/> begins.</param>
/// <param name="Text">The offending words; for an unknown material its name alone, to be compared with known names.</param>
/// <param name="Message">What is wrong and what would be right, in words.</param>
public readonly record struct LayerProblem(LayerProblemKind Kind, int Start, string Text, string Message);

/// <summary>A layer text as read: its layers, or all its problems.</summary>
/// <param name="Layers">Front face first; empty when there are problems.</param>
/// <param name="Problems">In the order of the text; empty when it could be read.</param>
public sealed record ParsedLayers(ImmutableArray<Layer> Layers, ImmutableArray<LayerProblem> Problems)
{
    /// <summary>Whether the text could be read.</summary>
    public bool IsValid => Problems.IsEmpty;
}

/// <summary>
/// Layers as a person writes them: <c>plasterboard:12.5, air:100, plasterboard:12.5</c>, front face first, thickness in
/// millimetres with a decimal point. Layers are separated by commas or by upright bars. Materials are read in either case,
/// and a space or an underscore in a name counts as a hyphen.
/// </summary>
public static class LayerText
{
    /// <summary>Accepted thickness of one layer.</summary>
    public static readonly ValidRange ThicknessMillimetres = new(0.001, 5000, "mm");

    private static readonly char[] Separators = [',', '|'];

    /// <summary>Reads a layer text.</summary>
    /// <param name="text">As a person wrote it.</param>
    /// <param name="material">The material of a name in lower case with hyphens, or null when there is none.</param>
    public static ParsedLayers Parse(string text, Func<string, Material?> material)
    {
        var layers = ImmutableArray.CreateBuilder<Layer>();
        var problems = ImmutableArray.CreateBuilder<LayerProblem>();
        int start = 0;
        while (start <= text.Length)
        {
            int end = text.IndexOfAny(Separators, start);
            if (end < 0) end = text.Length;
            ReadLayer(text, start, end, material, layers, problems);
            start = end + 1;
        }

        if (layers.Count > PlanningLoss.MaxLayers)
            problems.Add(new(LayerProblemKind.TooMany, 0, text, FormattableString.Invariant($"{layers.Count} layers; at most {PlanningLoss.MaxLayers} are accepted")));
        return new(problems.Count == 0 ? layers.ToImmutable() : [], problems.ToImmutable());
    }

    private static void ReadLayer(
        string text,
        int start,
        int end,
        Func<string, Material?> material,
        ImmutableArray<Layer>.Builder layers,
        ImmutableArray<LayerProblem>.Builder problems)
    {
        string part = text[start..end].Trim();
        int partStart = start + (text[start..end].Length - text[start..end].TrimStart().Length);
        int colon = part.IndexOf(':', StringComparison.Ordinal);
        if (part.Length == 0)
        {
            problems.Add(new(LayerProblemKind.Empty, start, part, "no layer here; write material:millimetres, such as plasterboard:12.5"));
            return;
        }

        if (colon < 0)
        {
            string hint = NumberText.Parse(part) is null ? "write material:millimetres, such as plasterboard:12.5" : "write a decimal point, not a comma";
            problems.Add(new(LayerProblemKind.NoThickness, partStart, part, $"\"{part}\" has no material and thickness; {hint}"));
            return;
        }

        string name = part[..colon].TrimEnd().Replace('_', '-').Replace(' ', '-').ToLowerInvariant(), number = part[(colon + 1)..].Trim();
        Material? found = material(name);
        if (found is null)
            problems.Add(new(LayerProblemKind.UnknownMaterial, partStart, name, $"no material is called \"{name}\""));

        double? thicknessMillimetres = NumberText.Parse(number);
        if (thicknessMillimetres is not { } value || !ThicknessMillimetres.Contains(value))
            problems.Add(new(LayerProblemKind.BadThickness, partStart + colon + 1, number, $"thickness \"{number}\" of {name} must be {ThicknessMillimetres}"));
        else if (found is not null)
            layers.Add(new(found, value / 1000));
    }
}
